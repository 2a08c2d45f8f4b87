// A small book with some of its bytes put otherwise is opened for reading, checked and asked. It is
// refused as trouble, or the check finds something, or it answers; it never crashes, never hangs
// and never breaks a promise. The text holds the changes, four bytes each: a place, and what is put
// there.

#include <fcntl.h>
#include <unistd.h>

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include "quantity/expect.h"
#include "sentence/sentence.h"
#include "store/book.h"

namespace {

namespace tree = std::filesystem;

constexpr const char* said[] = {
    "2026-03-01 aircraft ZZ-KIT is model \"Larkwing 5\", serial 5012, made 2019-03-14.",
    "2026-03-01 aircraft ZZ-KIT brings forward airframe 4321.6 h, 5608 landings.",
    "2026-03-01 engine TS-40 E-1001 fitted to aircraft ZZ-KIT engine 1, airframe 4321.6 h.",
    "2026-03-02 aircraft ZZ-KIT engine 1 E-1001 cruise temperature 691 C.",
    "2026-03-02 aircraft ZZ-KIT flew 1.7 h, 1 start, 3 landings.",
    "2026-03-03 aircraft ZZ-KIT flew 0.6 h, 1 start, 1 landing."};

// The book, made once, in a folder that goes when the process ends.
class Sample {
 public:
  Sample() {
    std::string name = (tree::temp_directory_path() / "timeworn-XXXXXX").string();
    folder_ = ::mkdtemp(name.data());
    const auto first = sentence::read(
        "2026-03-01 record \"Marrow Point\" begins, language 1, deferrals by local day, tenths "
        "half up, for tests, clock 2026-03-05T08:00:00Z, seed 7.",
        {});
    EXPECT(first.said.has_value());
    store::Book book = store::Book::create(path(), *first.said, surroundings());
    store::Pen pen(book);
    for (const char* const text : said) {
      const auto read = sentence::read(text, {});
      EXPECT(read.said.has_value());
      pen.append(*read.said);
    }
    pen.commit();
    std::ifstream file(path(), std::ios::binary);
    bytes_.assign(std::istreambuf_iterator<char>(file), {});
  }
  ~Sample() { tree::remove_all(folder_); }
  Sample(const Sample&) = delete;
  Sample& operator=(const Sample&) = delete;

  std::string path() const { return folder_ + "/the.book"; }
  store::Surroundings surroundings() const {
    return {quantity::Instant(), folder_ + "/state", {}, {}};
  }
  void write(const std::string& bytes) const {
    std::ofstream(path(), std::ios::binary | std::ios::trunc) << bytes;
  }
  const std::string& bytes() const { return bytes_; }

 private:
  std::string folder_;
  std::string bytes_;
};

void ask(const Sample& sample) {
  const auto book = store::Book::open(sample.path(), store::Access::read, sample.surroundings());
  book.check();
  for (const auto& entry : book.entries({})) EXPECT(!entry.sentence.empty());
  book.horizon();
  book.known_on(quantity::Day::of(20'000));
  book.entries_about({"aircraft", {"ZZ-KIT"}});
  book.uses("ZZ-KIT");
  for (const auto& total : book.running_totals("ZZ-KIT")) book.summed(total);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const Sample sample;
  std::string bytes = sample.bytes();
  for (std::size_t i = 0; i + 4 <= size; i += 4) {
    const std::size_t place =
        std::size_t{data[i]} << 16 | std::size_t{data[i + 1]} << 8 | data[i + 2];
    bytes[place % bytes.size()] = static_cast<char>(data[i + 3]);
  }
  sample.write(bytes);
  try {
    ask(sample);
  } catch (const store::Trouble& trouble) {
    EXPECT(!trouble.what().path.empty());
  }
  return 0;
}
