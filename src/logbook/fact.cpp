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

Fact::Fact() = default;
Fact::Fact(const Fact& other) = default;
Fact::Fact(Fact&& other) noexcept = default;
Fact& Fact::operator=(const Fact& other) = default;
Fact& Fact::operator=(Fact&& other) noexcept = default;
Fact::~Fact() = default;
bool operator==(const Fact& a, const Fact& b) {
  return static_cast<const AnyFact&>(a) == static_cast<const AnyFact&>(b);
}

}  // namespace logbook
