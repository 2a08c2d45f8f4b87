// docs/record.md tells the frame by an example and a recipe; both are taken from the page and
// tried.
#include <boost/test/unit_test.hpp>
#include <fstream>
#include <map>
#include <sstream>

#include "seal/digest.h"
#include "sentence/frame.h"
#include "store/chain.h"
#include "store/desk.h"

namespace {

using desk::Folder;

std::string page() {
  std::ifstream file(TIMEWORN_TREE "/docs/record.md");
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

// What stands between the mark and the next line of three back-quotes.
std::string block(const std::string& mark) {
  const std::string text = page();
  const auto begin = text.find("```" + mark + "\n");
  BOOST_REQUIRE(begin != text.npos);
  const auto start = begin + mark.size() + 4;
  return text.substr(start, text.find("```", start) - start);
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

logbook::RecordId record() {
  const std::string text = page();
  const std::string words = "Two bases of the record `";
  return *sentence::read_record_id(text.substr(text.find(words) + words.size(), 26));
}

// Each line of the example with its digest, worked out along each writer's chain.
std::map<std::string, std::string> digests() {
  std::map<std::string, std::string> result;
  std::map<logbook::WriterId, logbook::Digest> previous;
  for (const std::string& line : lines_of(block("record"))) {
    const auto read = sentence::read_line(line);
    const auto* const good = std::get_if<sentence::ReadLine>(&read);
    BOOST_REQUIRE_MESSAGE(good != nullptr, line);
    const auto digest =
        store::entry_digest(good->frame, {record(), previous[good->frame.writer], good->sentence});
    previous[good->frame.writer] = digest;
    result[line] = sentence::say_digest(digest);
  }
  return result;
}

std::string name_of(const std::string& line) { return line.substr(0, line.find(' ')); }

// The recipe, run by a plain shell on the lines of one writer.
std::string recipe(const std::string& lines, const logbook::RecordId& of) {
  const Folder folder;
  std::ofstream(folder.path("recipe.sh")) << block("sh");
  std::ofstream(folder.path("lines")) << lines;
  return desk::shell("sh " + folder.path("recipe.sh") + " " + sentence::say_record_id(of) + " <" +
                     folder.path("lines"));
}

std::string lines_of_writer(const std::string& start) {
  std::string result;
  for (const std::string& line : lines_of(block("record"))) {
    if (line.starts_with(start)) result += line + "\n";
  }
  return result;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(record_page)

BOOST_AUTO_TEST_CASE(the_example_has_the_digests_that_the_page_gives) {
  const std::string text = page();
  const auto all = digests();
  BOOST_TEST(all.size() == 4U);
  for (const auto& [line, digest] : all) {
    const auto read = sentence::read_line(line);
    const auto& good = std::get<sentence::ReadLine>(read);
    const auto body =
        sentence::say_digest(seal::digest(sentence::body_preimage(good.frame, good.sentence)));
    const std::string row = "| `" + name_of(line) + "` | `" + body + "` | `" + digest + "` |\n";
    BOOST_TEST(text.find(row) != text.npos, row);
  }
}

BOOST_AUTO_TEST_CASE(the_entries_of_the_example_know_and_refer_to_each_other_rightly) {
  const auto all = digests();
  std::map<std::string, std::string> by_name;
  for (const auto& [line, digest] : all) by_name[name_of(line)] = digest;
  for (const auto& [line, digest] : all) {
    const auto read = sentence::read_line(line);
    const auto& frame = std::get<sentence::ReadLine>(read).frame;
    for (const auto& entry : frame.refers) {
      const auto name = sentence::say_writer(entry.writer) + "-" + std::to_string(entry.number);
      BOOST_TEST(by_name.at(name) == sentence::say_digest(entry.digest));
    }
    if (frame.knows.empty()) continue;
    const auto name =
        sentence::say_writer(frame.knows[0].writer) + "-" + std::to_string(frame.knows[0].number);
    BOOST_TEST(sentence::say_knows(frame.knows) == name + "-" + by_name.at(name).substr(0, 16));
  }
}

BOOST_AUTO_TEST_CASE(the_recipe_gives_the_same_digests) {
  const auto all = digests();
  for (const std::string start : {"K7QXM", "M2ABC"}) {
    std::string wanted;
    for (const std::string& line : lines_of(lines_of_writer(start))) {
      wanted += name_of(line) + " " + all.at(line) + "\n";
    }
    BOOST_TEST(recipe(lines_of_writer(start), record()) == wanted);
  }
}

BOOST_AUTO_TEST_CASE(the_recipe_finds_a_changed_figure) {
  const std::string lines = lines_of_writer("K7QXM");
  std::string changed = lines;
  changed.replace(changed.find("3 landings"), 1, "4");
  const auto before = lines_of(recipe(lines, record()));
  const auto after = lines_of(recipe(changed, record()));
  BOOST_REQUIRE(after.size() == 3);
  BOOST_TEST(after[0] == before[0]);
  BOOST_TEST(after[1] != before[1]);
  BOOST_TEST(after[2] != before[2]);
}

BOOST_AUTO_TEST_CASE(the_recipe_checks_a_book) {
  const Folder folder;
  auto book = desk::make(folder);
  for (int i = 1; i <= 3; ++i) desk::write(book, desk::flew(i * 6));
  std::string lines;
  std::string wanted;
  for (const auto& entry : book.entries({})) {
    lines += sentence::say_line(entry.frame, entry.sentence) + "\n";
    wanted += sentence::say_writer(entry.id.writer) + "-" + std::to_string(entry.id.number) + " " +
              sentence::say_digest(entry.id.digest) + "\n";
  }
  BOOST_TEST(recipe(lines, book.record()) == wanted);
}

BOOST_AUTO_TEST_SUITE_END()
