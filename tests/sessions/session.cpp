#include "sessions/session.h"

#include <charconv>

#include "cases/pieces.h"

namespace sessions {

namespace {

using Lines = std::vector<std::string>;

constexpr std::string_view typed = "$ ";
constexpr std::string_view more = "> ";
constexpr std::string_view exit_mark = "= exit ";
constexpr std::string_view fence = "```";

// Where what is shown of one block ends: at the fence in a document, at the end in a session.
class Reader {
 public:
  Reader(Lines lines, Form form) : lines_(std::move(lines)), form_(form) {}

  Session read() {
    bool is_inside = form_ == Form::session;
    while (at_ < lines_.size()) {
      const std::string& line = lines_[at_];
      if (is_inside && line.starts_with(typed)) {
        take_exchange();
        continue;
      }
      if (form_ == Form::document && line.starts_with(fence)) is_inside = line == "```console";
      piece_.before += line + "\n";
      ++at_;
    }
    session_.pieces.push_back(piece_);
    return session_;
  }

 private:
  void take_exchange() {
    Exchange exchange;
    exchange.line = at_ + 1;
    exchange.command = lines_[at_++].substr(typed.size());
    while (at_ < lines_.size() && lines_[at_].starts_with(more)) {
      exchange.command += "\n" + lines_[at_++].substr(more.size());
    }
    std::string answer;
    while (at_ < lines_.size() && !ends_answer()) {
      const std::string& line = lines_[at_++];
      if (!line.starts_with(exit_mark)) {
        answer += line + "\n";
        continue;
      }
      const char* first = line.data() + exit_mark.size();
      std::from_chars(first, line.data() + line.size(), exchange.exit);
      break;
    }
    exchange.answer = tidy(answer);
    piece_.has_exchange = true;
    piece_.exchange = std::move(exchange);
    session_.pieces.push_back(piece_);
    piece_ = {};
    leave_out_empty_lines();
  }

  // At the next command, the fence, or a note of its own paragraph.
  bool ends_answer() const {
    const std::string& line = lines_[at_];
    if (line.starts_with(typed)) return true;
    if (form_ == Form::document) return line.starts_with(fence);
    return line.starts_with("# ") && lines_[at_ - 1].empty();
  }

  // The empty lines behind an answer are written anew.
  void leave_out_empty_lines() {
    while (at_ < lines_.size() && lines_[at_].empty()) ++at_;
  }

  Lines lines_;
  Form form_;
  std::size_t at_ = 0;
  Session session_;
  Piece piece_;
};

std::string said(const Exchange& exchange) {
  std::string text;
  bool is_first = true;
  for (const std::string& line : cases::lines_of(exchange.command)) {
    text += std::string(is_first ? typed : more) + line + "\n";
    is_first = false;
  }
  const std::string answer = tidy(exchange.answer);
  if (!answer.empty()) text += answer + "\n";
  if (exchange.exit != 0) text += std::string(exit_mark) + std::to_string(exchange.exit) + "\n";
  return text;
}

}  // namespace

std::string tidy(const std::string& answer) {
  std::string text;
  for (std::string& line : cases::lines_of(answer)) {
    const auto last = line.find_last_not_of(" \t");
    line.resize(last == std::string::npos ? 0 : last + 1);
    if (!text.empty() || !line.empty()) text += line + "\n";
  }
  while (text.ends_with('\n')) text.pop_back();
  return text;
}

Session read_session(const std::string& text, Form form) {
  return Reader(cases::lines_of(text), form).read();
}

std::string say_session(const Session& session) {
  std::string text;
  bool is_behind_exchange = false;
  for (const Piece& piece : session.pieces) {
    const bool wants_room = is_behind_exchange && !piece.before.starts_with(fence) &&
                            (piece.has_exchange || !piece.before.empty());
    if (wants_room) text += "\n";
    text += piece.before;
    if (piece.has_exchange) text += said(piece.exchange);
    is_behind_exchange = piece.has_exchange;
  }
  return text;
}

}  // namespace sessions
