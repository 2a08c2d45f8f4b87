// Half a sheet is never taken for a whole one: a disk or a pipe that fails in the middle of it, and
// memory that is refused there, are told. C++17 [istream.unformatted], [streambuf]: a buffer that
// throws leaves a stream with its bad bit and no exception.
#include "command/lines.h"

#include <boost/test/unit_test.hpp>
#include <istream>
#include <new>
#include <sstream>
#include <streambuf>

namespace {

// Gives its text, and then fails.
class Failing : public std::streambuf {
 public:
  explicit Failing(std::string text) : text_(std::move(text)) {
    setg(text_.data(), text_.data(), text_.data() + text_.size());
  }

 private:
  int_type underflow() override { throw std::bad_alloc(); }
  std::string text_;
};

std::vector<std::string> of(const std::string& text) {
  std::istringstream in(text);
  const auto lines = command::lines_of(in);
  BOOST_REQUIRE(lines);
  return *lines;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(lines)

BOOST_AUTO_TEST_CASE(every_line_is_read_with_or_without_a_last_line_end) {
  const std::vector<std::string> three{"one", "", "three"};
  BOOST_TEST(of("one\n\nthree\n") == three, boost::test_tools::per_element());
  BOOST_TEST(of("one\n\nthree") == three, boost::test_tools::per_element());
  BOOST_TEST(of("").empty());
}

BOOST_AUTO_TEST_CASE(a_reading_that_breaks_off_gives_no_lines) {
  for (const char* const text : {"", "one\n", "one\ntw", "one\ntwo\n"}) {
    Failing failing(text);
    std::istream in(&failing);
    BOOST_TEST(!command::lines_of(in).has_value(), text);
  }
}

BOOST_AUTO_TEST_CASE(a_line_that_breaks_off_is_none) {
  Failing failing("one\ntw");
  std::istream in(&failing);
  BOOST_TEST(command::next_line(in).value_or("none") == "one");
  BOOST_TEST(command::next_line(in).value_or("none") == "none");
}

BOOST_AUTO_TEST_SUITE_END()
