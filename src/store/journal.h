// store/journal.h: whether the rollback journal that lies beside a file is that file's own. One
// that was left by another file of that name would be written back into this one, page by page
// (sqlite.org/howtocorrupt.html 1.3 and 1.4).
#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <string>

namespace store {

inline constexpr std::size_t file_header_size = 100;
using FileHeader = std::array<std::uint8_t, file_header_size>;

// Throws not_allowed if the journal belongs to another user than the file, or keeps a first page
// from which this file cannot have come. header reads the file's first bytes as they now are;
// another command may be writing.
void expect_own_journal(const std::string& path, const std::function<FileHeader()>& header);

}  // namespace store
