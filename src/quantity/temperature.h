// quantity/temperature.h: temperatures are points and margins are differences, both in tenths of a
// degree Celsius. Two temperatures do not add.
#pragma once

#include <string>
#include <string_view>

#include "quantity/exact.h"
#include "quantity/typed.h"

namespace quantity {

class Margin : public Exact<Margin> {};
class Temperature : public Point<Temperature, Margin> {};

// Without trailing zeros and without the unit: 702, -12.5.
std::string say(Temperature temperature);
std::string say(Margin margin);

// One decimal at most; -90 to 2000 C.
Typed<Temperature> read_temperature(std::string_view text);
Typed<Margin> read_margin(std::string_view text);

}  // namespace quantity
