// Where functions begin and end, and how many parameters they take.

#include "house/functions.h"

#include <boost/test/unit_test.hpp>

using house::functions_of;
using house::parameters_of;

BOOST_AUTO_TEST_SUITE(functions)

BOOST_AUTO_TEST_CASE(functions_in_namespaces_and_classes_are_found_with_their_lines) {
  const auto found = functions_of(R"(
namespace a {
class B : public C<int> {
 public:
  explicit B(int x) : x_{x}, y_{1} {
    work();
  }
  int x() const { return x_; }
 private:
  int x_ = 0;
};
template <class T = std::vector<int>>
int free(T a,
         int b) {
  return b;
}
}  // namespace a
)");
  BOOST_REQUIRE(found.size() == 3U);
  BOOST_TEST(found[0].first_line == 5U);
  BOOST_TEST(found[0].lines() == 3U);
  BOOST_TEST(found[0].parameters == 1U);
  BOOST_TEST(found[1].lines() == 1U);
  BOOST_TEST(found[1].parameters == 0U);
  BOOST_TEST(found[2].first_line == 12U);
  BOOST_TEST(found[2].lines() == 5U);
  BOOST_TEST(found[2].parameters == 2U);
}

BOOST_AUTO_TEST_CASE(initialisers_are_no_functions_but_lambdas_in_them_are) {
  const auto found = functions_of(R"(
const std::array table = {{"a", f(1)}, {"b", {1, 2}}};
const Rules rules = {
  {"c", [](const A& a, int b) {
    return a.of(b);
  }},
  {"d", 2},
};
struct D { int a = 1; };
enum class E { one, two };
)");
  BOOST_REQUIRE(found.size() == 1U);
  BOOST_TEST(found[0].lines() == 3U);
  BOOST_TEST(found[0].parameters == 2U);
}

BOOST_AUTO_TEST_CASE(braces_within_parentheses_do_not_end_a_heading) {
  const auto found =
      functions_of("int f(int a = int{1}, B b = {}) {\n  g({1, 2});\n\n}\nint h() {}\n");
  BOOST_REQUIRE(found.size() == 2U);
  BOOST_TEST(found[0].lines() == 4U);
  BOOST_TEST(found[0].parameters == 2U);
  BOOST_TEST(found[1].first_line == 5U);
}

BOOST_AUTO_TEST_CASE(a_test_case_does_not_begin_at_the_suite) {
  const auto found = functions_of("BOOST_AUTO_TEST_SUITE(a)\n\nBOOST_AUTO_TEST_CASE(b) {\n}\n");
  BOOST_REQUIRE(found.size() == 1U);
  BOOST_TEST(found[0].first_line == 3U);
}

BOOST_AUTO_TEST_CASE(nesting_counts_control_blocks_only) {
  const auto found = functions_of(R"(
void f() {
  for (auto a : A{1}) {
    auto g = [&] { return B{2}; };
    if (a) {
      while (b) {
        c();
      }
    } else {
      d();
    }
  }
}
void g() { { { { {} } } } }
)");
  BOOST_REQUIRE(found.size() == 2U);
  BOOST_TEST(found[0].nesting == 3U);
  BOOST_TEST(found[1].nesting == 0U);
}

BOOST_AUTO_TEST_CASE(parameters_are_counted_outside_brackets_of_their_own) {
  BOOST_TEST(parameters_of("int f()") == 0U);
  BOOST_TEST(parameters_of("int f( )") == 0U);
  BOOST_TEST(parameters_of("std::map<int, int> f(std::map<int, int> a, int (*b)(int, int))") == 2U);
  BOOST_TEST(parameters_of("template <class A, class B> void f(A a, B b, int c)") == 3U);
  BOOST_TEST(parameters_of("bool operator()(A a, B b) const") == 2U);
  BOOST_TEST(parameters_of("decltype(auto) f(A a)") == 1U);
  BOOST_TEST(parameters_of("A::A(int a, int b, int c, int d, int e) : a_(a, b)") == 5U);
}

BOOST_AUTO_TEST_SUITE_END()
