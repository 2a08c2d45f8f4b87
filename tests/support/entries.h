// support/entries.h: facts put together by hand, and a small book of entries made of them, so that
// reckon can be tested without the reader of sentences. Numbers, frames and digests are filled in.
//
//   support::Book book;
//   book.say("2026-01-01", support::forward(kit, "4321.6", {support::had_hours("12.0")}));
//   auto flight = book.say("2026-03-04", support::flew(kit, "1.7", {support::starts(1)}));
//   book.correct(flight, "2026-03-04", support::flew(kit, "1.8"));
//   book.strike(flight);
//   book.write_as('M');  // another base, which has heard nothing yet
//   book.hear();         // and now knows all that is in the book
//   reckon::Standing standing = reckon::standing(book.entries(), support::day("2026-03-31"));
//
// Members that a helper does not take are set on the fact before it is said:
//   auto flown = support::flew(kit, "1.7"); flown.by_clock = true; book.say("2026-03-04", flown);
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "logbook/entry.h"

namespace support {

// Texts as people type them: "2026-03-04", "1.7" or "1:42". A misreading ends the test.
quantity::Day day(const std::string& text);
quantity::Hours hours(const std::string& text);
quantity::HourMeter meter(const std::string& text);
quantity::ClockTime clock(const std::string& text);  // "09:11-07:00"
quantity::ServiceHours service(const std::string& text);

logbook::Aircraft aircraft(const std::string& registration);
logbook::Engine engine(const std::string& model, const std::string& serial);
logbook::Part part(const std::string& number, const std::string& serial);
logbook::PlaceName place(const std::string& text);

logbook::Count starts(std::int64_t whole);
logbook::Count landings(std::int64_t whole);
logbook::Count flights(std::int64_t whole);
logbook::Count count(logbook::CounterKind kind, const std::string& amount);
logbook::CountAt at(const logbook::Count& count, const std::string& place);
logbook::MeterRun run(const std::string& meter, const std::string& from, const std::string& to);

// An amount that a thing has: since new unless a basis is given.
logbook::Had had_hours(const std::string& hours,
                       std::optional<logbook::Basis> since = std::nullopt);
logbook::Had had(const logbook::Count& count, std::optional<logbook::Basis> since = std::nullopt);

logbook::BringsForward forward(const logbook::Aircraft& aircraft, const std::string& airframe,
                               std::vector<logbook::Had> had = {});
logbook::BringsForward forward(const logbook::Thing& thing, std::vector<logbook::Had> had);
logbook::CountsHours counts_from(const logbook::Aircraft& aircraft, const std::string& meter,
                                 const std::string& factor = "");
logbook::Flew flew(const logbook::Aircraft& aircraft, const std::string& hours,
                   std::vector<logbook::Count> counts = {},
                   std::vector<logbook::MeterRun> meters = {});
logbook::Ran ran(const logbook::Aircraft& aircraft, const std::string& place,
                 std::vector<logbook::Count> counts);
logbook::Tried tried(const logbook::Aircraft& aircraft, const std::string& place,
                     std::int64_t starts);
logbook::Unaccounted unaccounted(const logbook::Aircraft& aircraft, const std::string& hours,
                                 std::vector<logbook::MeterRun> meters = {});

// What is fitted where, and the airframe's total there; an empty text states none.
struct Where {
  logbook::Thing host;
  std::string place;
  std::string airframe;
};
logbook::Fitted fitted(const logbook::Thing& thing, const Where& where,
                       std::vector<logbook::Had> with = {});
logbook::Removed removed(const logbook::Thing& thing, const Where& where);
logbook::Done done(const std::string& task, const logbook::Thing& thing,
                   const std::string& airframe = "");
logbook::Overhauled overhauled(const logbook::Thing& thing, std::vector<logbook::Had> had = {});
logbook::CountingRule rule(const logbook::Scope& scope, logbook::CounterKind counter,
                           std::vector<logbook::Each> each);
logbook::Each each(logbook::CountedEvent event, const std::string& weight);

class Book {
 public:
  // From here on the base with this letter writes. The first base is 'K'.
  void write_as(char base) { base_ = base; }
  // The base that writes has by now received all that is in the book.
  void hear();

  logbook::EntryId say(const std::string& day, logbook::Fact fact);
  logbook::EntryId say(logbook::Said said);
  logbook::EntryId correct(const logbook::EntryId& entry, const std::string& day,
                           logbook::Fact fact);
  logbook::EntryId strike(const logbook::EntryId& entry);
  // The frame of the next entry refers to this one.
  Book& refer(const logbook::EntryId& entry);

  const std::vector<logbook::Entry>& entries() const { return entries_; }

 private:
  logbook::EntryName named(const logbook::EntryId& entry);

  std::vector<logbook::Entry> entries_;
  char base_ = 'K';
  std::map<char, std::vector<logbook::Knows>> heard_;  // until the base's next entry
  std::vector<logbook::EntryId> refers_;               // of the entry that is being said
};

}  // namespace support
