#include "sentence/random_leaves.h"

#include <array>
#include <functional>
#include <map>

#include "quantity/expect.h"
#include "sentence/sorts/amounts.h"
#include "sentence/sorts/things.h"

namespace random_facts {
namespace {

using sentence::Sort;
using sentence::sort_of;
using Filler = std::function<void(Dice&, void*)>;
using Fillers = std::map<const Sort*, Filler>;

constexpr std::array hostile = {"K7QXM-123",
                                "FLEW",
                                "flew",
                                "engine 1",
                                "ENGINE  1",
                                "2026-03-04",
                                "1,234",
                                "ends.",
                                "\\",
                                "\"",
                                "on aircraft ZZ-KIT",
                                "LIGHT-OFF",
                                "aircraft",
                                "ZZ-KIT",
                                "zz-kit",
                                "E-1001",
                                "12",
                                "09:10",
                                "A-1 B-2",
                                "1.7 h",
                                "a, b",
                                "a: b",
                                "\\\"",
                                "C",
                                "ran",
                                "by clock",
                                "today",
                                "300-hour",
                                "number PN-1",
                                "2Q2018",
                                "tach",
                                "starts",
                                "Larkwing 5",
                                "B. Quill",
                                "or",
                                "x and y",
                                "-",
                                "Zo\xC3\xAB \xE2\x80\x9Cquoted\xE2\x80\x9D",
                                "collective",
                                "-5",
                                "A/B-1",
                                "entry K7QXM-5",
                                "D-26-04",
                                "at 5 h",
                                "ABCDEFGHIJKLMNOPQRSTUVWXY-1",
                                "record",
                                "7H",
                                "H",
                                "1H42",
                                "done on"};

std::string quoted(const std::string& text) {
  std::string result;
  sentence::say_quoted(result, text);
  return result;
}

// A name as the reader keeps it, so that it is one that may be said.
void fill_name(Dice& dice, const Sort& sort, void* value) {
  const sentence::Reading reading;
  while (true) {
    const std::string typed = quoted(hostile_text(dice));
    sentence::Cursor cursor(typed, typed.size(), reading);
    if (sort.read(cursor, value) && cursor.is_at_end()) return;
  }
}

template <class Type>
Type& as(void* value) {
  return *static_cast<Type*>(value);
}

std::int64_t seconds(Dice& dice) {
  const std::int64_t units =
      std::array{1, 36, 60, 360, 3600}.at(static_cast<std::size_t>(dice.between(0, 4)));
  return units * dice.between(0, dice.is_heads() ? 100 : 3'600'000'000 / units);
}

std::int64_t thousandths(Dice& dice, std::int64_t most) {
  const std::int64_t unit = dice.is_heads() ? 1000 : 1;
  return unit *
         dice.between(0, dice.is_heads() ? std::min<std::int64_t>(5, most / unit) : most / unit);
}

quantity::Day day(Dice& dice) {
  const auto first = quantity::make_day({quantity::first_year, 1, 1});
  const auto last = quantity::make_day({quantity::last_year, 12, 31});
  return quantity::Day::of(dice.between(first->count(), last->count()));
}

logbook::Counter counter(Dice& dice) {
  const auto kind = static_cast<logbook::CounterKind>(dice.between(0, 13));
  logbook::Counter result{kind, {}};
  if (kind == logbook::CounterKind::own) fill_name(dice, sort_of<logbook::Counter>, &result);
  return result;
}

void fill_count(Dice& dice, void* value) {
  auto& count = as<logbook::Count>(value);
  count.counter = counter(dice);
  const std::int64_t most = 999'999'999;
  count.amount = logbook::takes_fractions(count.counter)
                     ? quantity::Cycles::of(thousandths(dice, most * 1000))
                     : quantity::whole_cycles(dice.between(0, dice.is_heads() ? 2 : most));
}

void fill_part_of_life(Dice& dice, void* value) {
  auto& part = as<logbook::PartOfLife>(value);
  part.counter = counter(dice);
  const std::int64_t most = 999'999'999;
  part.limit = logbook::takes_fractions(part.counter)
                   ? quantity::Cycles::of(1 + thousandths(dice, most * 1000))
                   : quantity::whole_cycles(dice.between(1, dice.is_heads() ? 2 : most));
}

void fill_entry(Dice& dice, void* value) {
  constexpr std::string_view letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  auto& entry = as<logbook::EntryName>(value);
  entry.writer.clear();
  for (std::int64_t i = dice.between(5, 8); i > 0; --i) {
    entry.writer += letters[static_cast<std::size_t>(dice.between(0, 31))];
  }
  entry.number = dice.between(1, 1'000'000);
}

void fill_scan(Dice& dice, void* value) {
  auto& digest = as<std::string>(value);
  digest.clear();
  for (int i = 0; i < 64; ++i) digest += "0123456789abcdef"[dice.between(0, 15)];
}

void fill_plain_serial(Dice& dice, void* value) {
  if (dice.is_heads()) return fill_name(dice, sort_of<logbook::Serial>, value);
  as<logbook::Serial>(value).text = std::to_string(dice.between(0, 99999));
}

template <class Type>
Filler within(std::int64_t low, std::int64_t high) {
  return
      [low, high](Dice& dice, void* value) { as<Type>(value) = Type::of(dice.between(low, high)); };
}
Filler whole(std::int64_t low, std::int64_t high) {
  return [low, high](Dice& dice, void* value) {
    as<std::int64_t>(value) =
        dice.between(low, dice.is_heads() ? std::min<std::int64_t>(high, 2) : high);
  };
}
void fill_decimal(Dice& dice, void* value) {
  const std::int64_t sign = dice.between(0, 4) == 0 ? -1 : 1;
  as<quantity::Decimal>(value) = quantity::Decimal::of(sign * thousandths(dice, 999'999'999'999));
}

void add_names(Fillers& fillers) {
  const auto add = [&](const Sort& sort) {
    fillers[&sort] = [&sort](Dice& dice, void* value) { fill_name(dice, sort, value); };
  };
  add(sort_of<std::string>);
  add(sort_of<logbook::Registration>);
  add(sort_of<logbook::ModelName>);
  add(sort_of<logbook::Serial>);
  add(sort_of<logbook::PartNumber>);
  add(sort_of<logbook::TaskName>);
  add(sort_of<logbook::PlaceName>);
  add(sort_of<logbook::MeterName>);
  add(sort_of<logbook::PersonName>);
  add(sort_of<logbook::BaseName>);
  add(sort_of<logbook::RecordName>);
  fillers[&sort_of<logbook::EntryName>] = fill_entry;
  fillers[&sentence::scan_digest_sort] = fill_scan;
  fillers[&sort_of<logbook::PublicKey>] = [](Dice& dice, void* value) {
    fill_scan(dice, &as<logbook::PublicKey>(value).text);
  };
  fillers[&sentence::plain_serial_sort] = fill_plain_serial;
}

void add_figures(Fillers& fillers) {
  fillers[&sort_of<quantity::Hours>] = [](Dice& dice, void* value) {
    as<quantity::Hours>(value) = quantity::Hours::of(seconds(dice));
  };
  fillers[&sort_of<quantity::HourMeter>] = [](Dice& dice, void* value) {
    as<quantity::HourMeter>(value) = quantity::HourMeter::of(seconds(dice));
  };
  fillers[&sort_of<quantity::Factor>] = within<quantity::Factor>(1, 100'000);
  fillers[&sort_of<quantity::Weight>] = within<quantity::Weight>(0, 10'000'000);
  fillers[&sort_of<quantity::Temperature>] = within<quantity::Temperature>(-900, 20'000);
  fillers[&sort_of<quantity::Margin>] = within<quantity::Margin>(-20'900, 20'900);
  fillers[&sort_of<quantity::Decimal>] = fill_decimal;
  fillers[&sentence::volts_sort] = fill_decimal;
  fillers[&sentence::percent_sort] = fill_decimal;
  fillers[&sentence::amperes_sort] = fill_decimal;
  fillers[&sort_of<std::int64_t>] = whole(0, 999'999'999);
  fillers[&sentence::seconds_sort] = whole(0, 100'000);
  fillers[&sentence::minutes_sort] = whole(0, 100'000);
  fillers[&sentence::days_sort] = whole(0, 100'000);
  fillers[&sentence::feet_sort] = whole(-60'000, 60'000);
  fillers[&sort_of<logbook::Torque>] = [](Dice& dice, void* value) {
    fill_decimal(dice, &as<logbook::Torque>(value).value);
    as<logbook::Torque>(value).unit = static_cast<logbook::TorqueUnit>(dice.between(0, 3));
  };
  fillers[&sort_of<logbook::FuelFlow>] = [](Dice& dice, void* value) {
    fill_decimal(dice, &as<logbook::FuelFlow>(value).value);
    as<logbook::FuelFlow>(value).unit = static_cast<logbook::FuelUnit>(dice.between(0, 1));
  };
}

void add_times_and_counts(Fillers& fillers) {
  fillers[&sort_of<quantity::Day>] = [](Dice& dice, void* value) {
    as<quantity::Day>(value) = day(dice);
  };
  fillers[&sort_of<quantity::ClockTime>] = [](Dice& dice, void* value) {
    as<quantity::ClockTime>(value) = {static_cast<std::int32_t>(dice.between(0, 1439)),
                                      quantity::Offset::of(dice.between(-840, 840))};
  };
  fillers[&sort_of<quantity::Instant>] = [](Dice& dice, void* value) {
    as<quantity::Instant>(value) =
        quantity::Instant::of(day(dice).count() * 86'400 + dice.between(0, 86'399));
  };
  fillers[&sort_of<quantity::Quarter>] = [](Dice& dice, void* value) {
    as<quantity::Quarter>(value) = {static_cast<int>(dice.between(1900, 2199)),
                                    static_cast<int>(dice.between(1, 4))};
  };
  fillers[&sort_of<logbook::Counter>] = [](Dice& dice, void* value) {
    as<logbook::Counter>(value) = counter(dice);
  };
  fillers[&sort_of<logbook::Count>] = fill_count;
  fillers[&sort_of<logbook::PartOfLife>] = fill_part_of_life;
  fillers[&sort_of<logbook::Period>] = [](Dice& dice, void* value) {
    as<logbook::Period>(value) = {dice.between(0, dice.is_heads() ? 2 : 20'000),
                                  static_cast<logbook::PeriodUnit>(dice.between(0, 3))};
  };
}

}  // namespace

std::string hostile_text(Dice& dice) {
  std::string text = hostile.at(
      static_cast<std::size_t>(dice.between(0, static_cast<std::int64_t>(hostile.size()) - 1)));
  if (dice.between(0, 5) == 0) text += ' ' + hostile_text(dice);
  return text;
}

void fill_leaf(Dice& dice, const Sort& sort, void* value) {
  static const Fillers fillers = [] {
    Fillers result;
    add_names(result);
    add_figures(result);
    add_times_and_counts(result);
    return result;
  }();
  const auto found = fillers.find(&sort);
  EXPECT(found != fillers.end());
  found->second(dice, value);
}

}  // namespace random_facts
