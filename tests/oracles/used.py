"""What one entry uses at one spot: the aircraft itself, or one of its places.

Hours by the aircraft's source (design 4): where a flight states another figure too, the larger
counts. Counts by docs/decisions 0004: starts not stated make the total at least, landings not
stated are at least the flights, flights not stated are one, everything else not stated is none."""

from amounts import AT_LEAST, EXACT, ZERO, add, times

NO_SOURCE = {"meter": None, "is clock": False, "factor": 1000}
USES = ("flew", "ran", "tried", "unaccounted")
MISSING = (0, AT_LEAST)


class Sources:
    """Which clock counts each aircraft's hours, from which day."""

    def __init__(self, facts):
        self.said = {}
        for fact in facts:
            if fact.said.kind == "source":
                self.said.setdefault(fact.said.about, []).append(fact.said)

    def on(self, aircraft, day):
        held = [said for said in self.said.get(aircraft, ()) if said.day <= day]
        if not held:
            return NO_SOURCE
        # Of one day the one said last.
        return max(enumerate(held), key=lambda one: (one[1].day, one[0]))[1].says


def meter_run(said, meter):
    run = said.says["meters"].get(meter)
    return run[1] - run[0] if run else None


def is_by_clock(said, source):
    return source["is clock"] or "by clock" in said.says or not source["meter"]


def is_one_flight(says):
    """Between the flights of an entry it stood on the ground, which is no time in service."""
    return "since" not in says and says["counts"].get(("flights", None), 1000) == 1000


def raw_hours(said, source):
    """Time in service in seconds, before the factor."""
    says = said.says
    figures = [says["hours"] or 0]
    if source["meter"] and "by clock" not in says:
        figures.append(meter_run(said, source["meter"]) or 0)
    if source["is clock"] and "took off" in says and "landed" in says and is_one_flight(says):
        figures.append((says["landed"] - says["took off"]) % 1440 * 60)
    return max(figures)


def in_service(said, source, raw):
    """Thousandths of a second, with the factor of the source meter. By clock no factor may make
    a flight shorter: it is about the meter."""
    factor = source["factor"]
    if "by clock" in said.says:
        factor = max(factor, 1000)
    return raw * factor


def service_hours(said, source):
    """What the airframe takes from it; ground running is no time in service (14 CFR 1.1)."""
    if said.kind in ("ran", "tried"):
        return 0
    return in_service(said, source, raw_hours(said, source))


def hours_at(said, source, place):
    if place in said.says["hours at"]:
        return in_service(said, source, said.says["hours at"][place]), EXACT
    return service_hours(said, source), EXACT


def on_meter(said, source, meter):
    """Hours on a meter that runs beside; not stated, at least the hours of the flight."""
    run = meter_run(said, meter)
    if run is not None:
        return run * 1000, EXACT
    if said.kind in ("ran", "tried"):
        return ZERO
    return raw_hours(said, source) * 1000, AT_LEAST


def stated(said, counter, place):
    """A count stated for the place, else the one stated without a place; None if neither is."""
    counts = said.says["counts"]
    if place is not None and (counter, place) in counts:
        return counts[(counter, place)]
    return counts.get((counter, None))


def event(said, counter, place):
    """Starts, flights or landings at the spot."""
    amount = stated(said, counter, place)
    if amount is not None:
        return amount, EXACT
    if said.kind == "unaccounted":
        return MISSING
    if said.kind != "flew":
        return ZERO
    if counter == "starts":
        return MISSING
    flights = stated(said, "flights", place)
    flights = 1000 if flights is None else flights
    return flights, AT_LEAST if counter == "landings" else EXACT


def count(said, counter, place, ways):
    """What the entry counts on a counter at the spot; rules turn events into cycles. Of the rules
    that held while flights of several days were flown, the dearest count."""
    if counter in ("starts", "flights", "landings"):
        return event(said, counter, place)
    amount = stated(said, counter, place)
    if amount is not None:
        return amount, EXACT
    if said.kind == "unaccounted" and not any(ways):
        return MISSING
    if said.kind == "flew" and not any(ways) and counter.endswith("cycles"):
        return MISSING  # a flight has made some; nothing says how many
    counted = [by_rules(said, place, rules) for rules in ways]
    # By another rule it may be still more, where that one reads what nobody stated.
    return max(value for value, _ in counted), max(sure for _, sure in counted)


def speaks_of(said, clock):
    """Whether an entry speaks of the clock: what no entry and no paper speaks of is not known."""
    return (clock == "h" or clock.startswith("h by ") or clock in ("starts", "flights", "landings")
            or any(counter == clock for counter, _ in said.says["counts"]))


def by_rules(said, place, rules):
    total = ZERO
    for rule in rules:
        for weight, what in rule.says["each"]:
            total = add(total, times(event(said, what, place), weight))
    return total


def takes(said, spot):
    """Whether the aircraft, or what is fitted at the spot, uses anything of it: a ground run is of
    one place."""
    return spot is None or said.kind not in ("ran", "tried") or said.says["place"] == spot
