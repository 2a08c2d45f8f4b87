// reckon/period.h: the last day that may be flown when a calendar period runs from a day. Sources:
// 14 CFR 91.409 (calendar months: through the last day of the month), Reg. (EEC, Euratom) 1182/71
// Art. 3 (same day number, or the last day of a shorter month; the day of the event not counted).
// Never moved for a week's end or a holiday.
#pragma once

#include "logbook/amounts.h"

namespace reckon {

quantity::Day last_legal_day(quantity::Day from, const logbook::Period& period);

}  // namespace reckon
