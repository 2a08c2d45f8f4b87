// Types every session at a shell and holds what comes back against what is written:
// run_sessions PROGRAM FOLDER|FILE…; with TIMEWORN_REWRITE=1 it writes down what came back
// instead.
#include <algorithm>
#include <cstdlib>
#include <exception>
#include <filesystem>
#include <iostream>

#include "cases/process.h"
#include "sessions/session.h"

namespace {

namespace fs = std::filesystem;

bool is_rewriting() {
  const char* value = std::getenv("TIMEWORN_REWRITE");
  return value != nullptr && std::string(value) == "1";
}

std::vector<fs::path> session_files(const std::vector<std::string>& places) {
  std::vector<fs::path> files;
  for (const std::string& place : places) {
    if (!fs::is_directory(place)) {
      files.emplace_back(place);
      continue;
    }
    for (const auto& file : fs::directory_iterator(place)) {
      const auto ending = file.path().extension();
      if (ending == ".session" || ending == ".md") files.push_back(file.path());
    }
  }
  std::sort(files.begin(), files.end());
  return files;
}

// A folder in which `timeworn` is the built program and the demo fleet and the old books lie at
// hand.
class Desk {
 public:
  explicit Desk(const std::string& program) {
    fs::create_directory(tools_.path() / "bin");
    fs::create_symlink(program, tools_.path() / "bin" / "timeworn");
    if (fs::exists(TIMEWORN_TREE "/demo_db")) {
      fs::create_directory_symlink(TIMEWORN_TREE "/demo_db", folder_.path() / "demo_db");
    }
    fs::create_directory_symlink(TIMEWORN_TREE "/tests/books", folder_.path() / "books");
  }
  cases::Outcome type(const std::string& command) const {
    cases::Job job;
    job.words = {"/bin/sh", "-c", command};
    job.folder = folder_.path();
    job.path = (tools_.path() / "bin").string() + ":/usr/bin:/bin";
    job.streams = cases::Streams::together;
    return cases::run(job);
  }

 private:
  cases::ScratchFolder tools_;
  cases::ScratchFolder folder_;
};

std::string shown(const std::string& answer, int exit) {
  return answer + "\n= exit " + std::to_string(exit) + "\n";
}

// Types the session; the exchanges that came otherwise are told. Their number.
std::size_t play(const fs::path& path, sessions::Session& session, const std::string& program) {
  const Desk desk(program);
  std::size_t wrong = 0;
  for (sessions::Piece& piece : session.pieces) {
    if (!piece.has_exchange) continue;
    sessions::Exchange& exchange = piece.exchange;
    const cases::Outcome outcome = desk.type(exchange.command);
    const std::string answer = sessions::tidy(outcome.out);
    if (answer == exchange.answer && outcome.exit == exchange.exit) continue;
    ++wrong;
    if (!is_rewriting()) {
      std::cout << path.string() << ":" << exchange.line << ": $ " << exchange.command
                << "\n--- expected\n"
                << shown(exchange.answer, exchange.exit) << "--- got\n"
                << shown(answer, outcome.exit);
    }
    exchange.answer = answer;
    exchange.exit = outcome.exit;
  }
  return wrong;
}

bool has_exchange(const sessions::Session& session) {
  return std::any_of(session.pieces.begin(), session.pieces.end(),
                     [](const sessions::Piece& piece) { return piece.has_exchange; });
}

// True if all came back as it is written; a document without a session has nothing to hold.
bool holds(const fs::path& path, const std::string& program) {
  const std::string text = cases::file_text(path);
  const bool is_document = path.extension() == ".md";
  auto session = sessions::read_session(
      text, is_document ? sessions::Form::document : sessions::Form::session);
  if (!has_exchange(session)) {
    if (!is_document) std::cout << path.string() << ": nothing is typed in it\n";
    return is_document;
  }
  const std::size_t wrong = play(path, session, program);
  if (is_rewriting()) cases::write_file(path, sessions::say_session(session));
  return wrong == 0 || is_rewriting();
}

bool holds_or_tells(const fs::path& path, const std::string& program) {
  try {
    return holds(path, program);
  } catch (const std::exception& trouble) {
    std::cout << path.string() << ": " << trouble.what() << "\n";
    return false;
  }
}

}  // namespace

int main(int count, char** words) {
  if (count < 3) {
    std::cerr << "Use: run_sessions PROGRAM FOLDER|FILE...\n";
    return 2;
  }
  std::size_t passed = 0;
  std::size_t failed = 0;
  const std::string program = fs::absolute(words[1]).string();
  for (const fs::path& path : session_files({words + 2, words + count})) {
    ++(holds_or_tells(path, program) ? passed : failed);
  }
  std::cout << "cases: " << passed << " passed, " << failed << " failed\n";
  return failed == 0 && passed > 0 ? 0 : 1;
}
