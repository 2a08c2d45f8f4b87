// sessions/session.h: what is typed at a shell and what comes back, as it stands in .session files
// and in the ```console blocks of documents.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace sessions {

// "$ timeworn …" with its lines "> …", the answer below it, and "= exit N" unless that is 0.
struct Exchange {
  std::size_t line = 0;
  std::string command;
  std::string answer;
  int exit = 0;
};

// A stretch of text that stays as it is, then one exchange (absent behind the last).
struct Piece {
  std::string before;
  bool has_exchange = false;
  Exchange exchange;
};

struct Session {
  std::vector<Piece> pieces;
};

enum class Form { session, document };

Session read_session(const std::string& text, Form form);
// The same text with the answers as they are now.
std::string say_session(const Session& session);
// Without blanks at line ends and without empty lines around it.
std::string tidy(const std::string& answer);

}  // namespace sessions
