// A small program that writes one sentence into a book, called like the large one:
//   crash_writer say SENTENCE --book FILE
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <string>

#include "sentence/frame.h"
#include "sentence/sentence.h"
#include "store/book.h"

namespace {

store::Surroundings surroundings() {
  const auto now = std::chrono::system_clock::now().time_since_epoch();
  const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(now).count();
  const char* const state = std::getenv("XDG_STATE_HOME");
  return {quantity::Instant::of(seconds), std::string(state) + "/timeworn", {}, {}};
}

int write(const std::string& path, const std::string& words) {
  const auto said = sentence::read(words, {}).said;
  if (!said) return 2;
  auto book = store::Book::open(path, store::Access::write, surroundings());
  store::Pen pen(book);
  const auto entry = std::get<logbook::Entry>(pen.append(*said));
  pen.commit();
  std::cout << "Saved " << sentence::say_entry(entry.id) << ": " << entry.sentence << std::endl;
  return 0;
}

}  // namespace

int main(int argc, char* argv[]) {
  const bool is_right = argc == 5 && std::string(argv[1]) == "say" &&
                        std::string(argv[3]) == "--book" &&
                        std::getenv("XDG_STATE_HOME") != nullptr;
  if (!is_right) return 2;
  try {
    return write(argv[4], argv[2]);
  } catch (const store::Trouble& trouble) {
    std::cout << trouble.what().detail << std::endl;
    return 74;
  }
}
