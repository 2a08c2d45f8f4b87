// The main function of every test executable. It runs the cases and closes with one line,
// `cases: N passed, N failed`, which .ci/test adds up over all executables.

#include <boost/test/results_collector.hpp>
#include <boost/test/tree/observer.hpp>
#include <boost/test/tree/visitor.hpp>
#include <boost/test/unit_test.hpp>
#include <iostream>

namespace {

namespace unit_test = boost::unit_test;

class CaseCounter : public unit_test::test_observer {
 public:
  // Observers are told in order of priority; the results collector (2) must come before us.
  int priority() override { return 5; }

  void test_unit_finish(unit_test::test_unit const& unit, unsigned long) override {
    if (unit.p_type != unit_test::TUT_CASE) return;
    bool const has_passed = unit_test::results_collector.results(unit.p_id).passed();
    ++(has_passed ? passed_ : failed_);
  }

  // A case that is skipped or aborted has shown nothing, so it is told as failed.
  void test_unit_skipped(unit_test::test_unit const& unit, unit_test::const_string) override {
    if (unit.p_type == unit_test::TUT_CASE && unit.is_enabled()) ++failed_;
  }

  void test_finish() override {
    std::cout << "cases: " << passed_ << " passed, " << failed_ << " failed\n" << std::flush;
  }

 private:
  long passed_ = 0;
  long failed_ = 0;
};

CaseCounter& counter() {
  static CaseCounter the_counter;
  return the_counter;
}

bool register_counter() {
  unit_test::framework::register_observer(counter());
  return true;
}

}  // namespace

int main(int argc, char* argv[]) {
  return unit_test::unit_test_main(&register_counter, argc, argv);
}
