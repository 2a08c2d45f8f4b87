#include "reckon/trend/student.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

#include "quantity/expect.h"

namespace reckon::trend {

namespace {

boost::math::students_t law(double degrees_of_freedom) {
  EXPECT(degrees_of_freedom > 0.0);
  return boost::math::students_t(degrees_of_freedom);
}

// Upper tails are asked for as complements, because 1 - 0.0001 has already lost digits.
double exceeded_with_chance(double chance, double degrees_of_freedom) {
  return quantile(complement(law(degrees_of_freedom), chance));
}

}  // namespace

double two_sided_t(double confidence, double degrees_of_freedom) {
  EXPECT(confidence > 0.0 && confidence < 1.0);
  return exceeded_with_chance((1.0 - confidence) / 2.0, degrees_of_freedom);
}

double one_sided_t(double confidence, double degrees_of_freedom) {
  EXPECT(confidence > 0.0 && confidence < 1.0);
  return exceeded_with_chance(1.0 - confidence, degrees_of_freedom);
}

double two_sided_p(double t, double degrees_of_freedom) {
  return 2.0 * one_sided_p(std::abs(t), degrees_of_freedom);
}

double one_sided_p(double t, double degrees_of_freedom) {
  EXPECT(!std::isnan(t));
  return cdf(complement(law(degrees_of_freedom), t));
}

double two_sided_normal(double confidence) {
  EXPECT(confidence > 0.0 && confidence < 1.0);
  return quantile(complement(boost::math::normal(), (1.0 - confidence) / 2.0));
}

double two_sided_normal_p(double z) {
  EXPECT(!std::isnan(z));
  return 2.0 * cdf(complement(boost::math::normal(), std::abs(z)));
}

}  // namespace reckon::trend
