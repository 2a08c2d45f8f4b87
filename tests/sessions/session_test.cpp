#include "sessions/session.h"

#include <boost/test/unit_test.hpp>

BOOST_AUTO_TEST_SUITE(sessions_as_text)

BOOST_AUTO_TEST_CASE(are_read_and_written_alike) {
  const std::string text =
      "# A note.\n\n"
      "$ timeworn say 'x'\n"
      "Not saved.\n\n"
      "Second paragraph.\n"
      "= exit 65\n\n"
      "# Another note.\n"
      "$ printf 'a\n"
      "> b' | timeworn read -\n";
  const auto session = sessions::read_session(text, sessions::Form::session);
  BOOST_REQUIRE_EQUAL(session.pieces.size(), 3U);
  BOOST_TEST(session.pieces[0].exchange.answer == "Not saved.\n\nSecond paragraph.");
  BOOST_TEST(session.pieces[0].exchange.exit == 65);
  BOOST_TEST(session.pieces[1].exchange.command == "printf 'a\nb' | timeworn read -");
  BOOST_TEST(session.pieces[1].exchange.exit == 0);
  BOOST_TEST(sessions::say_session(session) == text);
}

BOOST_AUTO_TEST_CASE(stand_in_console_blocks_of_documents_only) {
  const std::string text =
      "Words.\n\n"
      "```sh\n$ not typed\n```\n\n"
      "```console\n$ timeworn help\nanswer\n\n$ timeworn due\nthe list\n= exit 1\n```\n\n"
      "More words.\n";
  const auto session = sessions::read_session(text, sessions::Form::document);
  BOOST_REQUIRE_EQUAL(session.pieces.size(), 3U);
  BOOST_TEST(session.pieces[0].exchange.command == "timeworn help");
  BOOST_TEST(session.pieces[1].exchange.answer == "the list");
  BOOST_TEST(session.pieces[1].exchange.exit == 1);
  BOOST_TEST(sessions::say_session(session) == text);
}

BOOST_AUTO_TEST_SUITE_END()
