// docs/record.md tells every kind of sentence: that part is printed from the declarations, and this
// test holds the page against them. TIMEWORN_REWRITE=1 writes it anew.
#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <fstream>
#include <sstream>

#include "sentence/sentence.h"

namespace {

const std::string path = TIMEWORN_TREE "/docs/record.md";
const std::string heading = "## The sentences\n";

std::string clauses_of(const sentence::KindText& kind) {
  std::string text;
  for (const std::string& clause : kind.clauses) text += "* `" + clause + "`\n";
  return text;
}

std::string chapter() {
  std::string text = heading +
                     "\nOne fact, one sentence. Printed from the program's declarations; examples "
                     "are canonical.\n";
  for (const sentence::KindText& kind : sentence::kinds()) {
    text += "\n### " + kind.name + "\n\n" + kind.purpose + "\n\n";
    for (const std::string& example : kind.examples) text += "    " + example + "\n";
    const std::string clauses = clauses_of(kind);
    if (!clauses.empty()) text += "\n" + clauses;
  }
  return text + "\n### Grammar (EBNF)\n\n```ebnf\n" + sentence::ebnf() + "```\n";
}

std::string page() {
  std::ifstream file(path);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_record_page_tells_every_sentence) {
  const std::string text = page();
  const auto begins = text.find(heading);
  if (std::getenv("TIMEWORN_REWRITE") != nullptr) {
    std::ofstream(path) << text.substr(0, begins) << (begins == std::string::npos ? "\n" : "")
                        << chapter();
    return;
  }
  BOOST_TEST_REQUIRE((begins != std::string::npos));
  BOOST_TEST((text.substr(begins) == chapter()));
}
