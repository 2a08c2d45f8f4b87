// main.cpp: reads the world once, runs one command, turns trouble into a sentence and an exit code.
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cstdlib>
#include <exception>
#include <iostream>
#include <new>

#include "command/clock.h"
#include "command/command_line.h"
#include "command/environment.h"
#include "logbook/trouble.h"
#include "quantity/expect.h"
#include "store/book.h"
#include "words/words.h"

namespace {

std::optional<std::string> variable(const std::string& name) {
  const char* value = std::getenv(name.c_str());
  return value == nullptr ? std::nullopt : std::optional<std::string>(value);
}

std::size_t columns() {
  const auto set = variable("COLUMNS");
  if (!set) return 80;
  const auto number = quantity::read_whole(*set);
  const bool is_usable = number.is_read() && number.value() >= 20 && number.value() <= 500;
  return is_usable ? static_cast<std::size_t>(number.value()) : 80;
}

command::World the_world() {
  command::World world;
  world.in = &std::cin;
  world.out = &std::cout;
  world.err = &std::cerr;
  world.now = command::machine_now();
  world.today = command::local_day(world.now);
  world.book_path = command::default_book_path(variable);
  world.state_folder = command::default_state_folder(variable);
  world.config_folder = command::default_config_folder(variable);
  world.can_ask = isatty(STDIN_FILENO) == 1 && variable("TERM").value_or("dumb") != "dumb";
  world.columns = columns();
  return world;
}

// A program may be started without its standard descriptors; then the first file that is opened
// becomes one of them, and what is printed is written into the book (sqlite.org/howtocorrupt.html
// 1.1). What stands in for them can be read at its end and never written, so that an answer that
// nobody receives is told by the exit code.
void hold_standard_descriptors() {
  for (const int descriptor : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO}) {
    if (::fcntl(descriptor, F_GETFD) != -1) continue;
    if (::open("/dev/null", O_RDONLY) != descriptor) std::abort();
  }
}

int run(const std::vector<std::string>& words) {
  command::World world = the_world();
  const int code = command::run(words, world);
  std::cout.flush();
  if (std::cout) return code;
  std::cerr << (world.has_saved ? words::unheard_text() : "The answer could not be written.")
            << '\n';
  return command::cannot_read_or_write;
}

}  // namespace

int main(int count, char** typed) {
  hold_standard_descriptors();
  // Books, journals and marks are their owner's alone, whatever the machine's habit is.
  ::umask(S_IRWXG | S_IRWXO);
  std::ios::sync_with_stdio(false);
  try {
    return run(std::vector<std::string>(typed + 1, typed + count));
  } catch (const quantity::BrokenPromise& broken) {
    std::cout.flush();
    std::cerr << "The program broke a promise to itself: " << broken.promise()
              << ". Please report it, and look with timeworn history what was saved.\n";
    return command::our_fault;
  } catch (const std::bad_alloc&) {
    std::cerr << words::no_memory_text() << '\n';
    return command::cannot_read_or_write;
  } catch (const std::exception& trouble) {
    std::cout.flush();
    std::cerr << words::unknown_trouble_text(trouble.what()) << '\n';
    return command::our_fault;
  }
}
