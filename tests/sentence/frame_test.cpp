#include "sentence/frame.h"

#include <algorithm>
#include <array>
#include <boost/test/unit_test.hpp>
#include <iostream>
#include <random>

#include "quantity/expect.h"

namespace {

using logbook::Frame;

const std::string first_writer = "K7QXM2V9D4TB6HN8RW3YSJ5E0G";
const std::string second_writer = "M2ABC7Z5XQ9WT4KD8NVE3HR6J0";
const std::string start_of_digest = "00112233445566ff";
const std::string digest = "00112233445566778899aabbccddeeff00112233445566778899aabbccddeeff";

// A line with one field exchanged; 0 is writer-number, 7 the sentence.
std::string line_with(std::size_t field, const std::string& text) {
  std::array<std::string, 8> fields = {first_writer + "-2",
                                       "2026-03-04T18:22:05Z",
                                       "1",
                                       "aircraft:ZZ-KIT",
                                       "-",
                                       "-",
                                       "-",
                                       "2026-03-04 aircraft ZZ-KIT flew 1.7 h."};
  fields[field] = text;
  std::string line;
  for (std::size_t i = 0; i < 7; ++i) line += (i == 0 ? "" : " ") + fields[i];
  return line + " | " + fields[7];
}

// What comes back when a line is read and said again, or which field was at fault.
std::string again(const std::string& line) {
  const auto read = sentence::read_line(line);
  if (const auto* bad = std::get_if<sentence::BadLine>(&read)) return "bad " + bad->field;
  const auto& good = std::get<sentence::ReadLine>(read);
  return sentence::say_line(good.frame,
                            good.withheld ? sentence::say_withheld(*good.withheld) : good.sentence);
}

Frame frame_about(std::vector<logbook::About> about) {
  Frame frame;
  frame.writer = *sentence::read_writer(first_writer);
  frame.number = 1;
  frame.about = std::move(about);
  return frame;
}

struct Faulty {
  std::size_t field;
  std::string text;
  std::string name;
};

logbook::WriterId random_writer(std::mt19937_64& random) {
  logbook::WriterId writer;
  for (auto& byte : writer.bytes) byte = static_cast<std::uint8_t>(random() % 256);
  return writer;
}

template <class Item>
void sort_once(std::vector<Item>& items) {
  std::sort(items.begin(), items.end());
  items.erase(std::unique(items.begin(), items.end()), items.end());
}

std::string random_name(std::mt19937_64& random) {
  static const std::array<std::string, 12> pieces = {"A",  " ", ",",  ":", "|", "%",
                                                     "\"", "é", "\n", "-", "7", "\u202E"};
  std::string name;
  for (auto length = 1 + random() % 5; length > 0; --length) name += pieces[random() % 12];
  return name;
}

Frame random_frame(std::mt19937_64& random) {
  Frame frame;
  frame.writer = random_writer(random);
  frame.number = static_cast<std::int64_t>(1 + random() % 1'000'000);
  frame.written = quantity::Instant::of(static_cast<std::int64_t>(random() % 2'000'000'000));
  frame.language = static_cast<std::int64_t>(1 + random() % 20);
  for (auto count = random() % 4; count > 0; --count) {
    frame.about.push_back({random_name(random), {random_name(random), random_name(random)}});
    frame.knows.push_back(
        {random_writer(random), static_cast<std::int64_t>(1 + random() % 12), {}});
    frame.refers.push_back({frame.writer, static_cast<std::int64_t>(1 + random() % 12), {}});
  }
  sort_once(frame.about);
  sort_once(frame.knows);
  sort_once(frame.refers);
  return frame;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(frame)

BOOST_AUTO_TEST_CASE(a_line_read_and_said_again_is_the_same_line) {
  const std::array<std::string, 6> good = {
      line_with(7, "2026-03-04 aircraft ZZ-KIT found \"a | b\"."),
      line_with(2, "12"),
      line_with(4, second_writer + "-9-" + start_of_digest + "," + second_writer + "-10-" +
                       start_of_digest),
      line_with(5, first_writer + "-1-" + digest),
      line_with(6, std::string(85, 'A') + "Q"),
      line_with(3, "-").replace(line_with(3, "-").find(" | ") + 3, std::string::npos,
                                "withheld " + digest)};
  for (const std::string& line : good) BOOST_TEST(again(line) == line);
}

BOOST_AUTO_TEST_CASE(things_are_sorted_by_class_and_names_before_they_are_encoded) {
  const Frame frame = frame_about({{"part", {"PN-4411", "B-88"}}, {"part number", {"PN-4411"}}});
  BOOST_TEST(sentence::say_about(frame.about) == "part:PN-4411:B-88,part%20number:PN-4411");
  BOOST_TEST(again(line_with(3, "part:PN-4411:B-88,part%20number:PN-4411")) ==
             line_with(3, "part:PN-4411:B-88,part%20number:PN-4411"));
  BOOST_TEST(again(line_with(3, "part%20number:PN-4411,part:PN-4411:B-88")) == "bad about");
}

BOOST_AUTO_TEST_CASE(names_with_marks_of_the_frame_are_encoded) {
  const Frame frame = frame_about({{"task", {"50 h: oil, filter | 10 %"}}});
  BOOST_TEST(sentence::say_about(frame.about) ==
             "task:50%20h%3A%20oil%2C%20filter%20%7C%2010%20%25");
  BOOST_TEST((sentence::read_about(sentence::say_about(frame.about)) == frame.about));
}

BOOST_AUTO_TEST_CASE(every_other_spelling_is_refused_and_the_field_is_named) {
  const std::string known = second_writer + "-9-" + start_of_digest;
  const std::vector<Faulty> faulty = {
      {0, first_writer, "entry"},
      {0, first_writer + "-0", "entry"},
      {0, first_writer + "-02", "entry"},
      {0, first_writer + "-2-3", "entry"},
      {0, first_writer + "-2-", "entry"},
      {0, first_writer + "-1234567890123456789", "entry"},
      {0, "k7qxm2v9d4tb6hn8rw3ysj5e0g-2", "entry"},
      {0, "K7QXM2V9D4TB6HN8RW3YSJ5E0H-2", "entry"},
      {1, "2026-03-04 18:22:05Z", "fields"},
      {1, "2026-03-04T18:22:05+00:00", "written"},
      {1, "2026-02-30T18:22:05Z", "written"},
      {2, "0", "language"},
      {2, "01", "language"},
      {2, "", "language"},
      {3, "", "about"},
      {3, "aircraft", "about"},
      {3, "aircraft:", "about"},
      {3, ":ZZ-KIT", "about"},
      {3, "aircraft:ZZ%2DKIT", "about"},
      {3, "task:10%", "about"},
      {3, "aircraft:ZZ-KIT,", "about"},
      {3, "aircraft:ZZ-KIT,aircraft:ZZ-KIT", "about"},
      {3, "aircraft:ZZ-MOB,aircraft:ZZ-KIT", "about"},
      {4, known + "0", "knows"},
      {4, second_writer + "-9-" + digest, "knows"},
      {4, second_writer + "-9-00112233445566FF", "knows"},
      {4, second_writer + "-10-" + start_of_digest + "," + known, "knows"},
      {4, known + "," + known, "knows"},
      {4, "-,-", "knows"},
      {5, known, "refers"},
      {5, first_writer + "-1", "refers"},
      {6, "AAAA", "signature"},
      {6, std::string(86, 'A') + "==", "signature"},
      {7, "", "sentence"},
      {7, "two\nlines.", "sentence"},
      {7, "carriage\r", "sentence"},
      {7, "no \xFF utf-8", "sentence"},
      {7, "withheld " + digest, "about"},
  };
  for (const Faulty& one : faulty) {
    BOOST_TEST(again(line_with(one.field, one.text)) == "bad " + one.name, one.text);
  }
  BOOST_TEST(again("nothing of the kind") == "bad bar");
  BOOST_TEST(again("") == "bad bar");
}

BOOST_AUTO_TEST_CASE(random_frames_come_back) {
  const auto seed = std::random_device()();
  std::cout << "random_frames_come_back: seed " << seed << "\n";
  std::mt19937_64 random(seed);
  for (int i = 0; i < 2000; ++i) {
    const Frame frame = random_frame(random);
    const auto read = sentence::read_line(sentence::say_line(frame, "2026-03-04 anything."));
    const auto* good = std::get_if<sentence::ReadLine>(&read);
    BOOST_REQUIRE(good != nullptr);
    BOOST_REQUIRE((good->frame == frame));
  }
}

BOOST_AUTO_TEST_CASE(what_is_digested_is_one_line_each) {
  Frame frame = frame_about({{"aircraft", {"ZZ-KIT"}}});
  frame.number = 2;
  frame.written = quantity::Instant::of(0);
  BOOST_TEST(sentence::body_preimage(frame, "Words.") == "aircraft:ZZ-KIT\nWords.\n");
  const auto record = *sentence::read_record_id(second_writer);
  const auto full = *sentence::read_digest(digest);
  BOOST_TEST(sentence::entry_preimage(frame, {record, full, {}}) ==
             "timeworn entry\n" + second_writer + "\n" + first_writer +
                 "-2\n1970-01-01T00:00:00Z\n1\n-\n-\n-\n" + digest + "\n" + std::string(64, '0') +
                 "\n");
}

BOOST_AUTO_TEST_CASE(an_unsorted_frame_is_a_broken_promise) {
  const Frame frame = frame_about({{"part", {"B"}}, {"part", {"A"}}});
  BOOST_CHECK_THROW(sentence::say_frame(frame), quantity::BrokenPromise);
  BOOST_CHECK_THROW(sentence::say_frame(frame_about({{"part", {}}})), quantity::BrokenPromise);
}

BOOST_AUTO_TEST_CASE(people_see_the_first_characters) {
  const logbook::EntryId entry{*sentence::read_writer(first_writer), 123, {}};
  BOOST_TEST(sentence::say_entry(entry) == "K7QXM-123");
  BOOST_TEST(sentence::say_entry(entry, 6) == "K7QXM2-123");
}

// Names as they are copied from paper: Crockford's base 32 reads o as 0, i and l as 1.
BOOST_AUTO_TEST_CASE(an_entry_name_is_read_as_it_is_typed) {
  const auto read = [](const char* typed) {
    const auto name = sentence::read_entry_name(typed);
    return name ? name->writer + " " + std::to_string(name->number) : "none";
  };
  BOOST_TEST(read("K7QXM-130") == "K7QXM 130");
  BOOST_TEST(read("k7qxm-130") == "K7QXM 130");
  BOOST_TEST(read("OKIL0-1O") == "0K110 10");
  BOOST_TEST(read(first_writer.c_str()) == "none");
  for (const char* const none : {"", "-", "-5", "K7QX-5", "K7QXM", "K7QXM-", "K7QXM-0", "K7QXM-05",
                                 "K7UXM-5", "K7QXM-x", "K7QXM-1234567890123456789"}) {
    BOOST_TEST(read(none) == "none", none);
  }
}

BOOST_AUTO_TEST_SUITE_END()
