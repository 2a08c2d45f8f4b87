#include "words/shares.h"

#include "words/figures.h"
#include "words/grammar.h"

namespace words {

namespace {

using reckon::Item;
using reckon::Sharing;
using reckon::Side;

std::string used_of_life(const Side& side) { return fill("{} used", {life_used_text(side)}); }

}  // namespace

std::string life_used_text(const reckon::LifeUsed& life) {
  constexpr std::int64_t one = 10'000;
  const std::int64_t parts = life.in_ten_thousandths();
  std::string decimals = std::to_string(one + parts % one).substr(1);
  while (!decimals.empty() && decimals.back() == '0') decimals.pop_back();
  const std::string whole = std::to_string(parts / one);
  return decimals.empty() ? whole : whole + "." + decimals;
}

std::string life_used_text(const Side& side) {
  const std::string used = life_used_text(*side.life_used);
  return side.left_is_at_most ? fill("at least {}", {used}) : used;
}

// A counter of which nothing was used has no share in the mix.
std::string mix_text(const Side& side) {
  const bool goes_on_alone = side.used.figure.raw() <= 0 || side.life_used->is_nothing();
  return goes_on_alone ? "if it alone goes on" : "at the same mix";
}

std::string_view sharing_word(Sharing sharing) {
  switch (sharing) {
    case Sharing::by_fractions:
      return "by fractions";
    case Sharing::shorter_stays:
      return "shorter limit stays";
    case Sharing::not_stated:
    case Sharing::disputed:
      break;
  }
  return {};
}

std::string sharing_text(const Item& item, const Side& side) {
  const std::string word(sharing_word(item.sharing));
  if (!side.life_used) return item.sharing == Sharing::shorter_stays ? word : std::string();
  if (item.mixed == nullptr) return fill("by fractions, {}", {used_of_life(side)});
  const std::string mix = fill("{}, {}", {mix_text(side), used_of_life(side)});
  return word.empty() ? mix : fill("{}, {}", {word, mix});
}

std::string all_left_text(const Item& item, const Side& side) {
  if (item.mixed == nullptr) return left_text(side);
  std::vector<std::string> texts;
  for (const Side& one : item.sides) texts.push_back(left_text(one));
  return listed(texts, "and");
}

}  // namespace words
