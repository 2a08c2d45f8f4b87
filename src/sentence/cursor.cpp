#include "sentence/cursor.h"

#include <algorithm>
#include <utility>

#include "quantity/figure.h"
#include "text/unicode.h"

namespace sentence {
namespace {

using quantity::is_digit;

constexpr std::string_view left_quote = "\xE2\x80\x9C";
constexpr std::string_view right_quote = "\xE2\x80\x9D";
constexpr std::string_view low_quote = "\xE2\x80\x9E";

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

bool is_letter(char c) { return lower(c) >= 'a' && lower(c) <= 'z'; }

bool is_bare(char c) { return is_letter(c) || is_digit(c) || c == '-' || c == '/'; }

bool is_ascii(std::string_view text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return (c & 0x80) == 0; });
}

// Where a word may end: not before a letter, a digit or anything that goes on like a name.
bool ends_word(std::string_view text, std::size_t at) {
  if (at >= text.size()) return true;
  const char c = text[at];
  if (c == '.') return at + 1 >= text.size() || blank_size(text, at + 1) != 0;
  return !is_bare(c) && ((c & 0x80) == 0 || blank_size(text, at) != 0 || opens_quote(text, at));
}

bool is_between_digits(std::string_view text, std::size_t at) {
  return at > 0 && at + 1 < text.size() && is_digit(text[at - 1]) && is_digit(text[at + 1]);
}

// True if a number begins before this place and goes on up to it: 1234.5 in 1234.5,25; not the day
// in 2026-05-01,3 nor the minutes in 1h42,3.
bool ends_number(std::string_view text, std::size_t at) {
  while (at > 0 && (is_digit(text[at - 1]) || is_between_digits(text, at - 1))) {
    const char c = text[at - 1];
    if (!is_digit(c) && c != '.' && c != ',' && c != ':') break;
    --at;
  }
  if (at > 0 && text[at - 1] == '-') --at;
  return at == 0 || (!is_bare(text[at - 1]) && text[at - 1] != ':');
}

// Unescaped, with every run of blanks as one.
std::string plain_text(std::string_view inside) {
  std::string result;
  for (std::size_t at = 0; at < inside.size();) {
    const std::size_t blank = blank_size(inside, at);
    if (blank != 0) {
      if (!result.empty() && result.back() != ' ') result += ' ';
      at += blank;
      continue;
    }
    const bool is_escape = inside[at] == '\\' && at + 1 < inside.size() &&
                           (inside[at + 1] == '"' || inside[at + 1] == '\\');
    if (is_escape) ++at;
    result += inside[at++];
  }
  if (result.ends_with(' ')) result.pop_back();
  return is_ascii(result) ? result : text::nfc(result);
}

// The bytes of the quotation mark that opens there; 0 if none does.
std::size_t opening_size(std::string_view text, std::size_t at) {
  const std::string_view rest = text.substr(std::min(at, text.size()));
  if (rest.starts_with('"')) return 1;
  return rest.starts_with(left_quote) || rest.starts_with(low_quote) ? left_quote.size() : 0;
}

// The bytes of the mark that closes at this place a text opened with so many bytes. Typed marks
// may close with the mark that opens in some languages.
std::size_t closing_size(std::string_view rest, std::size_t opening) {
  if (opening == 1) return rest.starts_with('"') ? 1 : 0;
  return rest.starts_with(right_quote) || rest.starts_with(left_quote) ? right_quote.size() : 0;
}

}  // namespace

std::size_t blank_size(std::string_view text, std::size_t at) {
  if (at >= text.size()) return 0;
  if (text[at] == ' ' || text[at] == '\t') return 1;
  return text.substr(at).starts_with(no_break_space) ? no_break_space.size() : 0;
}

bool is_clause_comma(std::string_view text, std::size_t at) {
  if (at >= text.size() || text[at] != ',') return false;
  return !is_between_digits(text, at) || !ends_number(text, at);
}

bool opens_quote(std::string_view text, std::size_t at) { return opening_size(text, at) != 0; }

std::optional<std::size_t> end_of_quote(std::string_view text, std::size_t at) {
  const std::size_t opening = opening_size(text, at);
  if (opening == 0) return std::nullopt;
  for (std::size_t i = at + opening; i < text.size(); ++i) {
    const std::size_t closing = closing_size(text.substr(i), opening);
    if (closing != 0) return i + closing;
    const bool is_escape =
        text[i] == '\\' && i + 1 < text.size() && (text[i + 1] == '"' || text[i + 1] == '\\');
    if (is_escape) ++i;
  }
  return std::nullopt;
}

bool Cursor::take_short_forms(bool takes) { return std::exchange(takes_short_forms_, takes); }

std::size_t Cursor::skip_blanks() {
  while (at_ < end_ && blank_size(text_, at_) != 0) at_ += blank_size(text_, at_);
  at_ = std::min(at_, end_);
  return at_;
}

bool Cursor::is_at_end() { return skip_blanks() == end_; }

bool Cursor::is_at_clause_end() { return is_at_end() || is_clause_comma(text_, at_); }

bool Cursor::take_comma() {
  if (is_at_end() || !is_clause_comma(text_, at_)) return false;
  ++at_;
  return true;
}

bool Cursor::take_word(std::string_view word) {
  const std::string_view rest = text_.substr(skip_blanks(), end_ - at_);
  if (rest.size() < word.size()) return false;
  for (std::size_t i = 0; i < word.size(); ++i) {
    if (lower(rest[i]) != lower(word[i])) return false;
  }
  if (is_bare(word.back()) && !ends_word(text_.substr(0, end_), at_ + word.size())) return false;
  at_ += word.size();
  return true;
}

bool Cursor::take_words(std::string_view words) {
  const std::size_t start = skip_blanks();
  for (std::string_view rest = words; !rest.empty();) {
    const std::size_t blank = rest.find(' ');
    const std::string_view word = rest.substr(0, blank);
    if (!take_word(word)) {
      want(skip_blanks(), rest, word);
      at_ = start;
      return false;
    }
    rest.remove_prefix(blank == std::string_view::npos ? rest.size() : blank + 1);
  }
  return true;
}

std::string_view Cursor::take_number() {
  const std::size_t start = skip_blanks();
  std::size_t i = start;
  while (i < end_) {
    const bool is_mark = text_[i] == '.' || text_[i] == ',' || text_[i] == ':';
    if (!is_digit(text_[i]) && !(is_mark && i + 1 < end_ && is_between_digits(text_, i))) break;
    ++i;
  }
  at_ = i;
  return text_.substr(start, i - start);
}

std::string_view Cursor::take_signed_number() {
  const std::size_t start = skip_blanks();
  const bool has_minus = start < end_ && text_[start] == '-';
  if (has_minus && (start + 1 >= end_ || !is_digit(text_[start + 1]))) return {};
  if (has_minus) ++at_;
  const std::string_view digits = take_number();
  return digits.empty() ? digits : text_.substr(start, at_ - start);
}

std::string_view Cursor::take_bare() {
  const std::size_t start = skip_blanks();
  std::size_t i = start;
  while (i < end_ && is_bare(text_[i])) ++i;
  if (i == start || !ends_word(text_.substr(0, end_), i)) return {};
  at_ = i;
  return text_.substr(start, i - start);
}

std::string_view Cursor::take_blankless() {
  const std::size_t start = skip_blanks();
  while (at_ < end_ && blank_size(text_, at_) == 0 && !is_clause_comma(text_, at_)) ++at_;
  return text_.substr(start, at_ - start);
}

std::optional<std::string> Cursor::take_quoted() {
  const std::size_t start = skip_blanks();
  const std::string_view line = text_.substr(0, end_);
  const std::optional<std::size_t> end = end_of_quote(line, start);
  if (!end) return std::nullopt;
  const std::size_t opening = opening_size(line, start);
  const std::string_view inside = line.substr(start + opening, *end - start - 2 * opening);
  at_ = *end;
  return plain_text(inside);
}

std::string_view Cursor::peek_word() const {
  Cursor ahead = *this;
  const std::size_t start = ahead.skip_blanks();
  if (const auto end = end_of_quote(text_.substr(0, end_), start)) {
    return text_.substr(start, *end - start);
  }
  return ahead.take_blankless();
}

void Cursor::want(std::size_t at, std::string_view shown, std::string_view word) {
  if (trace_ == nullptr || at < trace_->farthest) return;
  if (at > trace_->farthest) {
    trace_->wanted.clear();
    trace_->names.clear();
    trace_->farthest = at;
  }
  for (const Wanted& wanted : trace_->wanted) {
    if (wanted.shown == shown) return;
  }
  trace_->wanted.push_back({std::string(shown), std::string(word)});
}

void Cursor::want_name(std::size_t at, std::string_view name) {
  if (trace_ == nullptr || at != trace_->farthest) return;
  trace_->names.emplace_back(name);
}

bool Cursor::refuse(std::size_t from, Fault fault) {
  if (trace_ == nullptr) return false;
  Misreading misreading;
  misreading.fault = fault;
  misreading.from = static_cast<std::uint16_t>(from);
  misreading.to = static_cast<std::uint16_t>(at_);
  misreading.read = std::string(text_.substr(from, at_ - from));
  return refuse(std::move(misreading));
}

bool Cursor::refuse(Misreading misreading) {
  if (trace_ == nullptr || (trace_->refused && at_ <= trace_->refused_at)) return false;
  trace_->refused = std::move(misreading);
  trace_->refused_at = at_;
  return false;
}

}  // namespace sentence
