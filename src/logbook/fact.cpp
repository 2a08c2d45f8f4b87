#include "logbook/fact.h"

#include <utility>

#include "quantity/expect.h"

namespace logbook {

InnerSaid::InnerSaid(Said said) : said_(std::make_shared<const Said>(std::move(said))) {}

const Said& InnerSaid::operator*() const {
  EXPECT(said_ != nullptr);
  return *said_;
}

bool operator==(const InnerSaid& a, const InnerSaid& b) {
  if (a.is_empty() || b.is_empty()) return a.is_empty() == b.is_empty();
  return *a == *b;
}

}  // namespace logbook
