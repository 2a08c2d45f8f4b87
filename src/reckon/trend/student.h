// reckon/trend/student.h: Student's t law. With few readings a normal law draws its bands too
// narrow (with six readings by 29 %), so every band of the trend asks here. Boost.Math is known to
// student.cpp only.
#pragma once

namespace reckon::trend {

// The t that a t of so many degrees of freedom exceeds in size with a chance of 1 - confidence:
// 0.95 and 10 give 2.228. The confidence lies between 0 and 1, both left out; degrees of freedom
// are more than 0 and need not be whole. Source: NIST/SEMATECH e-Handbook 1.3.6.7.2.
double two_sided_t(double confidence, double degrees_of_freedom);

// The t that is exceeded on the upper side with a chance of 1 - confidence: 0.95 and 10 give 1.812.
double one_sided_t(double confidence, double degrees_of_freedom);

// The chance that pure accident gives a t at least this far from zero, to either side. An infinite
// t has no chance at all: 0.
double two_sided_p(double t, double degrees_of_freedom);

// The chance that pure accident gives this t or a greater one.
double one_sided_p(double t, double degrees_of_freedom);

// The normal law, for counts of many pairs only (Mann-Kendall, Theil-Sen), never for a band of few
// readings: the z that is exceeded in size with a chance of 1 - confidence, and the chance that
// pure accident gives a z at least this far from zero. 0.95 gives 1.959964.
double two_sided_normal(double confidence);
double two_sided_normal_p(double z);

}  // namespace reckon::trend
