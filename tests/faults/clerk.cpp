#include "faults/clerk.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <new>
#include <sstream>
#include <stdexcept>
#include <utility>

#include "command/command_line.h"
#include "command/the_book.h"
#include "quantity/expect.h"
#include "sentence/frame.h"
#include "store/book.h"
#include "words/words.h"

namespace faults {

namespace {

namespace tree = std::filesystem;

constexpr const char* set_up =
    "2026-03-01 aircraft ZZ-KIT is model \"Larkwing 5\", serial 5012, made 2019-03-14.\n"
    "2026-03-01 aircraft ZZ-KIT brings forward airframe 4321.6 h, 5608 landings, collective meter "
    "1234.5.\n"
    "2026-03-01 aircraft ZZ-KIT counts airframe hours from collective meter.\n"
    "2026-03-01 engine TS-40 E-1001 brings forward 1820.4 h, 2101 starts, 320.4 h since overhaul.\n"
    "2026-03-01 engine TS-40 E-1001 fitted to aircraft ZZ-KIT engine 1, airframe 4321.6 h.\n"
    "2026-03-01 model TS-40 overhaul at 3500.0 h since overhaul, source \"manual 5-10\".\n"
    "2026-03-01 part PN-4411 B-88 is \"main rotor blade\".\n"
    "2026-03-01 part PN-4411 B-88 fitted to aircraft ZZ-KIT \"main rotor blade 1\", airframe "
    "4321.6 h, with 2157.3 h since new.\n"
    "2026-03-01 part number PN-4411 retires at 2200.0 h since new, class life, source "
    "\"limitations rev 4\".\n"
    "2026-03-01 inspection \"annual inspection\" on aircraft ZZ-KIT every 12 calendar months, "
    "source \"14 CFR 91.409\".\n"
    "2025-06-12 inspection \"annual inspection\" done on aircraft ZZ-KIT, airframe 4240.0 h, by "
    "\"B. Quill\".\n"
    "2026-03-01 directive D-26-04 on aircraft ZZ-KIT every 50.0 h, source \"directive D-26-04\".\n"
    "2026-02-20 directive D-26-04 done on aircraft ZZ-KIT, airframe 4276.1 h, by \"B. Quill\".\n"
    "2026-03-01 aircraft ZZ-KIT reviewed \"directives and limitations\", revision \"2026-02\", by "
    "\"M. Tansley\".\n";

constexpr const char* work =
    "2026-03-01 model TS-40 start check, battery at least 24.5 V, peak at most 800 C, idle within "
    "30 s.\n"
    "2026-03-02 aircraft ZZ-KIT engine 1 E-1001 cruise temperature 691 C.\n"
    "2026-03-02 aircraft ZZ-KIT engine 1 E-1001 started, battery 25.9 V, peak 742 C.\n";

// As the program's own main does it.
template <class Act>
int with_trouble_told(Act act, std::ostream& err) {
  try {
    return act();
  } catch (const quantity::BrokenPromise& broken) {
    err << "The program broke a promise to itself: " << broken.promise() << '\n';
    return command::our_fault;
  } catch (const std::bad_alloc&) {
    err << words::no_memory_text() << '\n';
    return command::cannot_read_or_write;
  }
}

command::World world_of(const Clerk& clerk) {
  command::World world;
  world.now = quantity::read_instant("2026-03-05T08:00:00Z").value();
  world.today = quantity::utc_day(world.now);
  world.book_path = clerk.book();
  world.state_folder = clerk.folder() + "/state/timeworn";
  world.config_folder = clerk.folder() + "/config/timeworn";
  return world;
}

}  // namespace

Clerk::Clerk() {
  std::string name = (tree::temp_directory_path() / "timeworn-XXXXXX").string();
  folder_ = ::mkdtemp(name.data());
}

Clerk::~Clerk() { tree::remove_all(folder_); }

Told Clerk::type(const std::vector<std::string>& words, const std::string& input) const {
  std::ostringstream out;
  std::ostringstream err;
  const auto act = [&] {
    command::World world = world_of(*this);
    std::istringstream in(input);
    world.in = &in;
    world.out = &out;
    world.err = &err;
    return static_cast<int>(command::run(words, world));
  };
  const int code = with_trouble_told(act, err);
  // Moved out, so that nothing outside of the act asks for memory.
  return {code, std::move(out).str(), std::move(err).str()};
}

Clerk::Files Clerk::files() const {
  Files files;
  for (const auto& file : tree::recursive_directory_iterator(folder_)) {
    if (!file.is_regular_file()) continue;
    std::ostringstream content;
    content << std::ifstream(file.path(), std::ios::binary).rdbuf();
    files[tree::relative(file.path(), folder_).string()] = content.str();
  }
  return files;
}

void Clerk::put_back(const Files& files) const {
  for (const auto& file : tree::directory_iterator(folder_)) tree::remove_all(file.path());
  for (const auto& [name, content] : files) {
    const tree::path path = tree::path(folder_) / name;
    tree::create_directories(path.parent_path());
    std::ofstream(path, std::ios::binary) << content;
  }
}

std::vector<std::string> new_book() {
  return {"new", "Marrow Point", "--for-tests", "--clock", "2026-03-05T08:00:00Z", "--seed", "7"};
}

std::string set_up_sheet() { return set_up; }

std::string work_sheet(int flights) {
  std::string sheet = work;
  for (int i = 0; i < flights; ++i) {
    const int from = 12345 + 5 * i;
    const auto tenths = [](int count) {
      return std::to_string(count / 10) + '.' + std::to_string(count % 10);
    };
    sheet += "2026-03-03 aircraft ZZ-KIT flew 0.5 h, 1 start, 1 landing, collective meter " +
             tenths(from) + " to " + tenths(from + 5) + ".\n";
  }
  return sheet;
}

std::string answers(const Clerk& clerk) {
  std::string all;
  for (const std::vector<std::string>& question :
       {std::vector<std::string>{"check", "--json"}, {"due", "--json"}, {"lives", "--json"}}) {
    const Told told = clerk.type(question);
    all += std::to_string(told.code) + '\n' + told.out + told.err;
  }
  return all;
}

std::string writer_of(const Clerk& clerk) {
  const command::World world = world_of(clerk);
  const auto book =
      store::Book::open(world.book_path, store::Access::read, command::surroundings(world));
  return sentence::short_writer(book.writer());
}

}  // namespace faults
