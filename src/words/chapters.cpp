#include "words/chapters.h"

#include "words/figures.h"
#include "words/grammar.h"
#include "words/names.h"
#include "words/words.h"

namespace words {

namespace {

std::string by_text(const logbook::Said& said) {
  return said.by ? fill(", by {}", {in_quotes(said.by->text)}) : std::string();
}

// The sentence that stands instead, as it is written in the correction.
std::string instead_text(const std::string& sentence) {
  const auto colon = sentence.find("\": ");
  return colon == std::string::npos ? sentence : sentence.substr(colon + 3);
}

}  // namespace

std::string_view standing_word(Standing standing) {
  switch (standing) {
    case Standing::counts:
      return "";
    case Standing::corrected:
      return "corrected";
    case Standing::struck:
      return "struck";
    case Standing::not_counted:
      return "not counted";
  }
  return "";
}

std::string chapter_text(const logbook::Entry& entry) {
  if (!entry.said) return entry.sentence + " (this version cannot read it)";
  const logbook::Said& said = *entry.said;
  const std::string day = quantity::say_long(said.day);
  if (const auto* corrected = std::get_if<logbook::Corrected>(&said.fact)) {
    return fill("corrected on {} because {}{}: {}",
                {day, in_quotes(corrected->because), by_text(said), instead_text(entry.sentence)});
  }
  if (const auto* struck = std::get_if<logbook::Struck>(&said.fact)) {
    return fill("struck on {} because {}{}.", {day, in_quotes(struck->because), by_text(said)});
  }
  return entry.sentence;
}

std::string moved_text(const reckon::Statement& statement) {
  const std::string since =
      statement.moved_by ? fill(" since {}", {entry_name(*statement.moved_by)}) : std::string();
  return fill("{} in {}: written {}, now {}{}.",
              {thing_name(statement.thing), entry_name(statement.entry),
               figure_exact(statement.stated, statement.clock),
               figure_exact(statement.reckoned, statement.clock), since});
}

std::string stay_text(const reckon::Stay& stay) {
  const std::string from = quantity::say_long(stay.from.day);
  const std::string in = fill("{} of {} from {} ({})", {stay.place.text, thing_name(stay.host),
                                                        from, entry_name(stay.fitted)});
  if (!stay.to) return in + ", and still there.";
  const std::string because =
      stay.removed ? fill(" ({})", {entry_name(*stay.removed)}) : std::string();
  return fill("{} to {}{}.", {in, quantity::say_long(stay.to->day), because});
}

}  // namespace words
