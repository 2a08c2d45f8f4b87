// store/walk.h: the walk through all entries of a book, link by link: digests, order, arrivals, and
// as deep as asked for signatures and words.
#pragma once

#include <string>
#include <vector>

#include "logbook/entry.h"
#include "store/finding.h"
#include "store/finding_lists.h"
#include "store/sqlite.h"

namespace store {

// Signatures are verified anew, and compared with the list of proofs if it has our form. Gives what
// the lists should hold, as far as the entries could be read; nothing unless the depth is whole.
Listed walk(Database& database, const logbook::RecordId& record, Depth depth,
            std::vector<Finding>& findings);

// Throws not_proved with the first fault of a chain or a signature of a file from elsewhere. What a
// record may have while its bases have not met is none (store/copied.h).
void expect_proved(Database& database, const logbook::RecordId& record, const std::string& path);

}  // namespace store
