// tests/laws/demo_book.h: the demo fleet in a book of its own, asked through the command floor.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "logbook/entry.h"

namespace laws {

struct Answer {
  int code = 0;
  std::string out;
  std::string err;
};

class DemoBook {
 public:
  DemoBook();
  ~DemoBook();
  DemoBook(const DemoBook&) = delete;
  DemoBook& operator=(const DemoBook&) = delete;

  Answer run(const std::vector<std::string>& words, const std::string& input = "") const;
  std::vector<logbook::Entry> entries() const;
  // Strikes, through the store, every entry that the claim picks; gives how many.
  int strike(const std::function<bool(const logbook::Entry&)>& picks) const;
  void append(const logbook::Said& said) const;
  // A line of another base, as it would come by file: straight into the permanent table.
  void put_line_of_another_base(const std::string& about, const std::string& sentence,
                                std::int64_t language) const;

 private:
  std::string folder_;
};

}  // namespace laws
