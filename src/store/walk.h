// store/walk.h: the walk through all entries of a book, link by link: digests, order, arrivals, and
// as deep as asked for signatures and words.
#pragma once

#include <string>
#include <vector>

#include "logbook/entry.h"
#include "store/finding.h"
#include "store/finding_lists.h"
#include "store/proofs.h"
#include "store/sqlite.h"

namespace store {

// What was worked out on the way, as far as the entries could be read.
struct Walked {
  Listed expected;  // what the lists should hold; nothing unless the depth is whole
  Proofs proved;    // by which key each signature was verified anew; nothing in a quick walk
};
Walked walk(Database& database, const logbook::RecordId& record, Depth depth,
            std::vector<Finding>& findings);

// Throws not_proved with the first fault of a chain or a signature of a file from elsewhere; what a
// record may have while its bases have not met is none (store/copied.h). Gives the proofs that were
// worked out, which stand in place of the file's own list.
Proofs expect_proved(Database& database, const logbook::RecordId& record, const std::string& path);

}  // namespace store
