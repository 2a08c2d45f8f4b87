#include "sentence/sorts/names.h"

#include <algorithm>
#include <array>

#include "quantity/figure.h"
#include "sentence/sorts/entry_shape.h"
#include "sentence/sorts/known.h"
#include "text/pieces.h"

namespace sentence {
namespace {

constexpr std::size_t most_name_bytes = 120;
constexpr std::array<std::string_view, 4> bare_meters = {"collective", "engine-run", "oil-pressure",
                                                         "tach"};

// How the names of a class are kept.
enum class Folding { to_capitals, kept };
enum class Figures { refused, in_quotes };

struct NameForm {
  Folding folding;
  Figures figures;
};

bool read_in_quotes(Cursor& cursor, const NameForm& form, std::string& name) {
  const std::size_t start = cursor.skip_blanks();
  std::optional<std::string> quoted = cursor.take_quoted();
  if (!quoted) return false;
  const bool is_taken = !quoted->empty() && quoted->size() <= most_name_bytes &&
                        (form.figures == Figures::in_quotes || !looks_like_a_figure(*quoted));
  if (!is_taken) return cursor.refuse(start, Fault::bad_name);
  name = std::move(*quoted);
  if (form.folding == Folding::to_capitals && can_stand_bare(text::upper(name))) {
    name = text::upper(name);
  }
  return true;
}

// A name typed without quotes: in capitals if their loss cannot make it another name.
bool read_bare(Cursor& cursor, Folding folding, std::string& name) {
  const std::size_t start = cursor.skip_blanks();
  const std::string_view typed = cursor.take_bare();
  if (typed.empty()) return false;
  const std::string capitals = text::upper(typed);
  if (capitals.size() > most_bare) return cursor.refuse(start, Fault::bad_name);
  const bool is_name =
      can_stand_bare(capitals) && (folding == Folding::to_capitals || capitals == typed);
  if (is_name) name = capitals;
  return is_name;
}

bool read_name(Cursor& cursor, const NameForm& form, std::string& name) {
  const std::size_t start = cursor.skip_blanks();
  if (opens_quote(cursor.text(), start)) return read_in_quotes(cursor, form, name);
  return read_bare(cursor, form.folding, name);
}

constexpr NameForm with_figures{Folding::to_capitals, Figures::in_quotes};
constexpr NameForm without_figures{Folding::to_capitals, Figures::refused};
constexpr NameForm kept_as_typed{Folding::kept, Figures::refused};

// engine 1 to engine 9, in any case; empty for anything else.
std::string engine_place(std::string_view name) {
  constexpr std::string_view word = "ENGINE ";
  const bool is_one = name.size() == word.size() + 1 && text::upper(name).starts_with(word) &&
                      name.back() >= '1' && name.back() <= '9';
  return is_one ? std::string("engine ") + name.back() : std::string();
}

// "engine 1 B-2" without its quotes is engine 1 with the serial B-2, so it may be no place.
bool reads_as_place_and_serial(std::string_view name) {
  constexpr std::size_t size = std::string_view("engine 1").size();
  return name.size() > size && name[size] == ' ' && !engine_place(name.substr(0, size)).empty() &&
         can_stand_bare(text::upper(name.substr(size + 1)));
}

std::string bare_meter(std::string_view name) {
  for (const std::string_view meter : bare_meters) {
    if (text::upper(meter) == text::upper(name)) return std::string(meter);
  }
  return {};
}

}  // namespace

bool read_text(Cursor& cursor, std::string& text) {
  const std::size_t start = cursor.skip_blanks();
  std::optional<std::string> quoted = cursor.take_quoted();
  if (!quoted) return false;
  if (quoted->empty()) return cursor.refuse(start, Fault::missing);
  text = std::move(*quoted);
  return true;
}

bool read_quoted_name(Cursor& cursor, std::string& name) {
  return read_in_quotes(cursor, kept_as_typed, name);
}

bool read_registration(Cursor& cursor, logbook::Registration& name) {
  return read_name(cursor, without_figures, name.text);
}
bool read_model(Cursor& cursor, logbook::ModelName& name) {
  return read_name(cursor, with_figures, name.text);
}
bool read_serial(Cursor& cursor, logbook::Serial& name) {
  return read_name(cursor, with_figures, name.text);
}
bool read_part_number(Cursor& cursor, logbook::PartNumber& name) {
  return read_name(cursor, with_figures, name.text);
}

bool read_task(Cursor& cursor, logbook::TaskName& name) {
  const std::size_t start = cursor.skip_blanks();
  const bool is_quoted = opens_quote(cursor.text(), start);
  // A bare name is itself, whatever else is known.
  if (read_name(cursor, {Folding::kept, Figures::in_quotes}, name.text)) return true;
  cursor.go_to(start);
  if (is_quoted || cursor.known() == nullptr) return false;
  std::vector<Candidate<logbook::TaskName>> candidates;
  for (const auto& [class_, task] : cursor.known()->tasks) {
    candidates.push_back({task.text, task, task.text});
  }
  return take_only(cursor, candidates, name);
}

bool read_place(Cursor& cursor, logbook::PlaceName& name) {
  const std::size_t start = cursor.skip_blanks();
  if (opens_quote(cursor.text(), start)) {
    if (!read_quoted_name(cursor, name.text)) return false;
    if (reads_as_place_and_serial(name.text)) return cursor.refuse(start, Fault::bad_name);
    const std::string engine = engine_place(name.text);
    if (!engine.empty()) name.text = engine;
    return true;
  }
  if (!cursor.take_words("engine")) return false;
  const std::string engine = engine_place("engine " + std::string(cursor.take_bare()));
  name.text = engine;
  return !engine.empty();
}

bool read_meter(Cursor& cursor, logbook::MeterName& name) {
  const std::size_t start = cursor.skip_blanks();
  const bool is_quoted = opens_quote(cursor.text(), start);
  if (is_quoted && !read_quoted_name(cursor, name.text)) return false;
  const std::string typed = is_quoted ? name.text : std::string(cursor.take_bare());
  const std::string known = bare_meter(typed);
  if (!known.empty()) name.text = known;
  if (!is_quoted && known.empty()) {
    for (const std::string_view meter : bare_meters) cursor.want(start, meter, meter);
  }
  return is_quoted || !known.empty();
}

bool read_person(Cursor& cursor, logbook::PersonName& name) {
  const bool is_quoted = opens_quote(cursor.text(), cursor.skip_blanks());
  if (is_quoted || cursor.known() == nullptr) return read_quoted_name(cursor, name.text);
  std::vector<Candidate<logbook::PersonName>> candidates;
  for (const logbook::PersonName& person : cursor.known()->people) {
    candidates.push_back({person.text, person, person.text});
  }
  return take_only(cursor, candidates, name);
}

bool read_base(Cursor& cursor, logbook::BaseName& name) {
  return read_quoted_name(cursor, name.text);
}
bool read_record(Cursor& cursor, logbook::RecordName& name) {
  return read_quoted_name(cursor, name.text);
}

bool read_plain_serial(Cursor& cursor, logbook::Serial& name) {
  const std::size_t start = cursor.skip_blanks();
  const std::string_view typed = cursor.take_bare();
  if (quantity::is_all_digits(typed) && typed.size() <= most_bare) {
    name.text = std::string(typed);
    return true;
  }
  cursor.go_to(start);
  return read_serial(cursor, name);
}

bool read_entry(Cursor& cursor, logbook::EntryName& name) {
  const std::string typed = text::upper(cursor.take_bare());
  if (!has_entry_shape(typed)) return false;
  const std::size_t hyphen = typed.rfind('-');
  name.writer = typed.substr(0, hyphen);
  name.number = quantity::value_of_digits(std::string_view(typed).substr(hyphen + 1));
  return true;
}

bool read_scan(Cursor& cursor, std::string& digest) {
  constexpr std::size_t digits = 64;
  std::string typed(cursor.take_bare());
  for (char& c : typed) {
    if (c >= 'A' && c <= 'F') c = static_cast<char>(c - 'A' + 'a');
  }
  const bool is_digest =
      typed.size() == digits && typed.find_first_not_of("0123456789abcdef") == std::string::npos;
  if (is_digest) digest = std::move(typed);
  return is_digest;
}

bool read_key(Cursor& cursor, logbook::PublicKey& key) { return read_scan(cursor, key.text); }

void say_place(std::string& out, const logbook::PlaceName& name) {
  if (engine_place(name.text) == name.text && !name.text.empty()) {
    out += name.text;
  } else {
    say_quoted(out, name.text);
  }
}

void say_meter(std::string& out, const logbook::MeterName& name) {
  if (bare_meter(name.text) == name.text && !name.text.empty()) {
    out += name.text;
  } else {
    say_quoted(out, name.text);
  }
}

}  // namespace sentence
