#include "words/starts.h"

#include <variant>

#include "words/grammar.h"
#include "words/names.h"
#include "words/words.h"

namespace words {

namespace {

using logbook::Started;
using quantity::Decimal;
using reckon::StartFinding;
using reckon::StartJudged;
using reckon::StartMeasure;
using reckon::StartVerdict;

std::string with(std::string_view name, const std::optional<Decimal>& figure,
                 std::string_view unit) {
  if (!figure) return {};
  return fill("{} {} {}", {std::string(name), quantity::say(*figure), std::string(unit)});
}

std::string_view measure_name(StartMeasure measure) {
  switch (measure) {
    case StartMeasure::battery:
      return "battery";
    case StartMeasure::lowest:
      return "lowest volts";
    case StartMeasure::residual:
      return "residual temperature";
    case StartMeasure::light_off:
      return "light-off";
    case StartMeasure::peak:
      return "peak";
    case StartMeasure::idle:
      return "time to idle";
    case StartMeasure::generator:
      return "generator";
    case StartMeasure::time_above:
      return "time above";
  }
  return "";
}

std::string_view unit_of(StartMeasure measure) {
  switch (measure) {
    case StartMeasure::battery:
    case StartMeasure::lowest:
    case StartMeasure::generator:
      return "V";
    case StartMeasure::residual:
    case StartMeasure::peak:
      return "C";
    case StartMeasure::light_off:
    case StartMeasure::idle:
    case StartMeasure::time_above:
      return "s";
  }
  return "";
}

void add(std::vector<std::string>& parts, std::string part) {
  if (!part.empty()) parts.push_back(std::move(part));
}

std::string joined(const std::vector<std::string>& parts) {
  std::string text;
  for (const std::string& part : parts) text += (text.empty() ? "" : ", ") + part;
  return text;
}

std::string untold_text(const StartJudged& judged) {
  std::vector<std::string> parts;
  for (const logbook::Band& band : judged.untold) {
    parts.push_back(
        fill("{} C for {} s", {quantity::say(band.above), std::to_string(band.seconds)}));
  }
  return fill("Whether it passed the limit of {} cannot be told: say how long it stood above that.",
              {joined(parts)});
}

struct GaugeWords {
  std::string operator()(const logbook::GaugeTemperature& gauge) const {
    return fill("temperature {} C", {quantity::say(gauge.value)});
  }
  std::string operator()(const logbook::GaugeTorque& gauge) const {
    return fill("torque {} {}", {quantity::say(gauge.value.value), unit(gauge.value.unit)});
  }
  std::string operator()(const logbook::GaugeSpeed& gauge) const {
    return fill("{} {} %", {name(gauge.of), quantity::say(gauge.percent)});
  }

 private:
  static std::string unit(logbook::TorqueUnit unit) {
    switch (unit) {
      case logbook::TorqueUnit::percent:
        return "%";
      case logbook::TorqueUnit::psi:
        return "psi";
      case logbook::TorqueUnit::foot_pounds:
        return "ft-lb";
      case logbook::TorqueUnit::newton_metres:
        return "N m";
    }
    return {};
  }
  static std::string name(logbook::Rotating of) {
    switch (of) {
      case logbook::Rotating::gas_generator:
        return "gas generator";
      case logbook::Rotating::power_turbine:
        return "power turbine";
      case logbook::Rotating::rotor:
        return "rotor";
      case logbook::Rotating::propeller:
        return "propeller";
    }
    return {};
  }
};

std::string gauge_text(const logbook::GaugeFor& what) {
  return fill("{} for {} s", {std::visit(GaugeWords{}, what.gauge), std::to_string(what.seconds)});
}

std::string day_and_entry(quantity::Day day, const logbook::EntryId& entry) {
  return fill("{} ({})", {quantity::say_long(day), entry_name(entry)});
}

}  // namespace

std::string findings_text(const std::vector<StartFinding>& findings) {
  std::vector<std::string> parts;
  for (const StartFinding& finding : findings) parts.push_back(finding_text(finding));
  return joined(parts);
}

std::string start_figures(const Started& started) {
  std::vector<std::string> parts;
  if (started.peak) add(parts, fill("peak {} C", {quantity::say(*started.peak)}));
  add(parts, with("battery", started.battery_volts, "V"));
  add(parts, with("lowest", started.lowest_volts, "V"));
  if (started.idle_seconds) {
    add(parts, fill("idle in {} s", {std::to_string(*started.idle_seconds)}));
  }
  add(parts, with("generator", started.generator_volts, "V"));
  return joined(parts);
}

std::string finding_text(const StartFinding& finding) {
  const std::string unit(unit_of(finding.measure));
  if (finding.above) {
    return fill("{} s above {} C, {} s more than the {} s allowed",
                {quantity::say(finding.figure), quantity::say(*finding.above),
                 quantity::say(finding.by), quantity::say(finding.stated)});
  }
  return fill("{} {} {}, {} {} {} {} {}",
              {measure_name(finding.measure), quantity::say(finding.figure), unit,
               quantity::say(finding.by), unit, finding.is_below ? "below" : "above",
               quantity::say(finding.stated), unit});
}

std::string start_text(const StartJudged& judged) {
  const std::string start = fill("Start of {}", {day_and_entry(judged.day, judged.newest)});
  const std::string figures = start_figures(*judged.started);
  const std::string in_brackets = figures.empty() ? "" : " (" + figures + ")";
  const std::string untold = judged.untold.empty() ? "" : " " + untold_text(judged);
  switch (judged.verdict()) {
    case StartVerdict::past_a_limit:
      return fill("{}: past a limit: {}.", {start, findings_text(judged.findings)}) + untold;
    case StartVerdict::worth_a_look:
      return fill("{}: worth a look: {}.", {start, findings_text(judged.findings)});
    case StartVerdict::normal:
      return fill("{}: normal{}.", {start, in_brackets});
    case StartVerdict::not_known:
      break;
  }
  const std::string outside = judged.findings.empty() ? "" : ": " + findings_text(judged.findings);
  if (!untold.empty()) return fill("{}{}{}.", {start, in_brackets, outside}) + untold;
  return fill(judged.has_check || judged.has_limits
                  ? "{}: no figure was read that anything stated could be held against{}."
                  : "{}: nothing is on record to hold it against{}.",
              {start, in_brackets});
}

std::string_view start_word(const StartJudged& judged) {
  switch (judged.verdict()) {
    case StartVerdict::past_a_limit:
      return "past a limit";
    case StartVerdict::worth_a_look:
      return "worth a look";
    case StartVerdict::normal:
      return "normal";
    case StartVerdict::not_known:
      return "not known";
  }
  return "not known";
}

std::string exceedance_text(const reckon::Exceedance& exceedance) {
  const std::string about = exceedance.engine
                                ? thing_name(*exceedance.engine)
                                : thing_name(exceedance.aircraft) + " " + exceedance.place.text;
  const std::string when = day_and_entry(exceedance.day, exceedance.newest);
  std::string what;
  if (exceedance.what) {
    what = gauge_text(*exceedance.what);
    for (const reckon::PastGauge& past : exceedance.past) {
      what += fill(", past {} by {} and {} s", {gauge_text(past.limit), quantity::say(past.by),
                                                std::to_string(past.seconds_over)});
    }
  } else if (!exceedance.start.empty()) {
    what = "start with " + findings_text(exceedance.start);
  } else {
    what = "start of which it cannot be told whether it passed a limit";
  }
  return fill("{} on {}, {}: {}. It stands until it is looked into.",
              {capital(about), short_name(exceedance.aircraft), when, what});
}

}  // namespace words
