// What may be a name, and how it is written.
#include <algorithm>
#include <array>

#include "quantity/calendar.h"
#include "quantity/figure.h"
#include "quantity/hours.h"
#include "sentence/sorts/entry_shape.h"
#include "sentence/sorts/figures.h"
#include "sentence/sorts/names.h"
#include "text/pieces.h"

namespace sentence {
namespace {

using quantity::is_digit;

constexpr std::string_view base32 = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

bool is_capital(char c) { return c >= 'A' && c <= 'Z'; }

bool fits_bare_name(char c) { return is_capital(c) || is_digit(c) || c == '-' || c == '/'; }

bool is_day_word(std::string_view name) {
  constexpr std::array<std::string_view, 2> day_words = {"TODAY", "YESTERDAY"};
  return std::find(day_words.begin(), day_words.end(), text::upper(name)) != day_words.end();
}

template <class Name>
void say_one(std::string& out, const Name& name) {
  say_name(out, name.text);
}

}  // namespace

bool can_stand_bare(std::string_view name) {
  const bool has_letter = std::any_of(name.begin(), name.end(), is_capital);
  const bool has_mark =
      std::any_of(name.begin(), name.end(), [](char c) { return is_digit(c) || c == '-'; });
  return name.size() <= most_bare && has_letter && has_mark &&
         std::all_of(name.begin(), name.end(), fits_bare_name);
}

bool has_entry_shape(std::string_view name) {
  const std::size_t hyphen = name.rfind('-');
  if (hyphen == std::string_view::npos || hyphen < 5 || hyphen > 26) return false;
  const std::string_view number = name.substr(hyphen + 1);
  return name.substr(0, hyphen).find_first_not_of(base32) == std::string_view::npos &&
         quantity::is_all_digits(number) && number.size() <= 18 && number.front() != '0';
}

bool looks_like_a_figure(std::string_view name) {
  const std::string_view unsigned_name = name.starts_with('-') ? name.substr(1) : name;
  const bool is_number = is_figure(quantity::read_hours(unsigned_name)) ||
                         is_figure(quantity::read_figure(unsigned_name, {6, 0, 0}));
  return is_number || is_figure(quantity::read_day(name)) ||
         is_figure(quantity::read_clock_time(name)) || is_day_word(name);
}

void say_quoted(std::string& out, const std::string& text) {
  out += '"';
  for (const char c : text) {
    if (c == '"' || c == '\\') out += '\\';
    out += c;
  }
  out += '"';
}

void say_name(std::string& out, const std::string& name) {
  if (can_stand_bare(name) && !has_entry_shape(name)) {
    out += name;
  } else {
    say_quoted(out, name);
  }
}

void say_registration(std::string& out, const logbook::Registration& name) { say_one(out, name); }
void say_model(std::string& out, const logbook::ModelName& name) { say_one(out, name); }
void say_serial(std::string& out, const logbook::Serial& name) { say_one(out, name); }
void say_part_number(std::string& out, const logbook::PartNumber& name) { say_one(out, name); }
void say_task(std::string& out, const logbook::TaskName& name) { say_one(out, name); }
void say_person(std::string& out, const logbook::PersonName& name) { say_quoted(out, name.text); }
void say_base(std::string& out, const logbook::BaseName& name) { say_quoted(out, name.text); }
void say_record(std::string& out, const logbook::RecordName& name) { say_quoted(out, name.text); }

void say_plain_serial(std::string& out, const logbook::Serial& name) {
  const bool is_plain = quantity::is_all_digits(name.text) && name.text.size() <= most_bare;
  if (is_plain) {
    out += name.text;
  } else {
    say_name(out, name.text);
  }
}

void say_entry(std::string& out, const logbook::EntryName& name) {
  out += name.writer;
  out += '-';
  out += std::to_string(name.number);
}

void say_scan(std::string& out, const std::string& digest) { out += digest; }
void say_key(std::string& out, const logbook::PublicKey& key) { out += key.text; }

}  // namespace sentence
