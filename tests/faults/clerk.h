// tests/faults/clerk.h: someone who types commands, in this process, in a folder of their own with
// a book and a place for its marks; and a small book with every kind of derived row in it.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace faults {

struct Told {
  int code = 0;
  std::string out;
  std::string err;
};

class Clerk {
 public:
  Clerk();
  ~Clerk();
  Clerk(const Clerk&) = delete;
  Clerk& operator=(const Clerk&) = delete;

  std::string folder() const { return folder_; }
  std::string book() const { return folder_ + "/the.book"; }
  // Types a command; trouble becomes a sentence and a code as in the program's own main.
  Told type(const std::vector<std::string>& words, const std::string& input = "") const;

  // Every file below the folder, and the way back to it. Nobody may have the book open.
  using Files = std::map<std::string, std::string>;
  Files files() const;
  void put_back(const Files& files) const;

 private:
  std::string folder_;
};

// A record for tests, so that its identities are the same every time.
std::vector<std::string> new_book();
// Sheets of dated sentences: fourteen that set up an aircraft with an engine, parts and tasks; and
// work, readings, starts and flights, so many flights.
std::string set_up_sheet();
std::string work_sheet(int flights);

// What the book answers: the check with the newest digests, what is due and the lives, as JSON.
std::string answers(const Clerk& clerk);
// Its writer as it stands in the name of an entry.
std::string writer_of(const Clerk& clerk);

}  // namespace faults
