"""How a history begins: the fleet, what everything has, its limits and counting rules; and the
ordinary days between the hard ones."""

from amounts import hours_text
from sentences import thing_text
from world import BLADE, DISC, E1, E2, E3, KIT, MODULE, SPARE, TENTH, TWN

HOURS = {E1: 1820 * 3600 + 4 * TENTH, E2: 2006 * 3600 + 9 * TENTH, E3: 4870 * 3600 + 3 * TENTH,
         MODULE: 6260 * 3600, DISC: 2760 * 3600, BLADE: 900 * 3600, SPARE: 0}
SINCE_OVERHAUL = {E1: 320 * 3600 + 4 * TENTH, E2: 2006 * 3600 + 9 * TENTH,
                  E3: 1120 * 3600 + 3 * TENTH, MODULE: 3100 * 3600}


def begin(world):
    """All that is said on the first day."""
    for craft in world.crafts.values():
        world.on_day(f'{thing_text(craft.thing)} is model "{craft.model}".')
    begin_aircraft(world)
    begin_things(world)
    made = world.pick(("2021-02-10", "2021-01-25"))
    world.on_day(f'{thing_text(BLADE)} is "blade", made {made}.')
    begin_rules(world)
    begin_limits(world)
    begin_fitted(world)


def begin_aircraft(world):
    for craft in world.crafts.values():
        is_metered = craft.thing == KIT and (
            world.happens(0.3) or {"meter change", "dead meter"} & set(world.shapes))
        meter = ""
        if is_metered:
            craft.meter = world.pick((1234 * 3600 + 5 * TENTH, 6100 * 3600, 0))
            meter = f", collective meter {hours_text(craft.meter)}"
            craft.factor = world.pick((1000, 1000, 1000, 1120, 900))
            factor = f", factor {craft.factor / 1000:g}" if craft.factor != 1000 else ""
            world.on_day(f"{thing_text(craft.thing)} counts airframe hours from collective meter"
                         f"{factor}.")
        if craft.thing == TWN and world.happens(0.2):
            craft.is_by_clock = True
            world.on_day(f"{thing_text(craft.thing)} counts airframe hours from clock.")
        world.on_day(f"{thing_text(craft.thing)} brings forward airframe "
                     f"{hours_text(craft.total // 1000)} h, 5608 landings, 40 \"hook loads\""
                     f"{meter}.")


def begin_things(world):
    """What each brings forward. A disc of which something is not known is a shape of its own."""
    for engine in (E1, E2, E3):
        cycles = f", {world.pick((2210, '2210.35', 900))} cycles" if world.happens(0.8) else ""
        world.on_day(f"{thing_text(engine)} brings forward {hours_text(HOURS[engine])} h, "
                     f"{world.pick((2101, 3300))} starts, 4000 landings{cycles}, "
                     f"{hours_text(SINCE_OVERHAUL[engine])} h since overhaul.")
    world.on_day(f"{thing_text(MODULE)} brings forward {hours_text(HOURS[MODULE])} h, 3000 starts, "
                 f"3500 cycles, {hours_text(SINCE_OVERHAUL[MODULE])} h since overhaul.")
    world.on_day(f"{thing_text(DISC)} brings forward {disc_has(world)}.")


def disc_has(world):
    if "unknown child" not in world.shapes:
        return f"{hours_text(HOURS[DISC])} h, 2500 starts, 3000 cycles"
    return world.pick((
        "hours unknown",
        f"{hours_text(HOURS[DISC])} h, 2500 starts, cycles unknown",
        f"at least {hours_text(HOURS[DISC])} h, at least 2500 starts, at least 3000 cycles",
        f"{hours_text(HOURS[DISC])} h, by default 3000 cycles",
        f"{hours_text(HOURS[DISC])} h",
    ))


def begin_rules(world):
    weights = ("1 each start", "0.5 each start, 0.5 each flight", "1 each flight",
               "0.75 each start, 0.1 each landing")
    world.rule = world.on_day(f"model TS-40 counts cycles, {world.pick(weights)}.")
    if world.happens(0.5):
        world.on_day(f"model TP-9 counts cycles, {world.pick(weights)}.")
    if world.happens(0.25):
        world.on_day(f"part number DI-3 counts cycles, {world.pick(weights)}.")


def begin_limits(world):
    if world.happens(0.3):
        world.on_day("engine TS-40 E-1 is made 2016-01-20, released 2016-02-28.")
        world.on_day("model TS-40 retires at 9000 cycles since new or "
                     + world.pick(("10 years since release", "120 calendar months since release",
                                   "121 months since manufacture", "3690 days since manufacture"))
                     + ".")
    world.on_day("model TS-40 overhaul at "
                 f"{world.pick(('2020.0', '3500.0', '400.0'))} h since overhaul, class overhaul.")
    world.on_day("part number MOD-2 overhaul at "
                 f"{world.pick(('3120.0', '3500.0'))} h since overhaul"
                 + world.pick(("", "", " or 1 month since overhaul", " or 40 days since overhaul"))
                 + ".")
    world.on_day("part number DI-3 retires at "
                 + world.pick(("3010 cycles since new",
                               "2770.0 h since new or 3500 cycles since new",
                               "the latest of 2800.0 h since new and 40.0 h after 2026-01-20",
                               "3030 cycles since new or 2526 starts since new"))
                 + ", class life.")
    if "changed limit" not in world.shapes:
        world.blade_limit = world.on_day("part number PN-4411 retires at " + blade_limit(world)
                                         + ".")
    if world.happens(0.3):
        world.on_day("part PN-4411 B-1 retires when exceeding "
                     + world.pick(('30 "hook loads" since fitting', "30.0 h since fitting",
                                   "8 landings since fitting")) + ".")


def blade_limit(world):
    return world.pick(("920.0 h since new", "2200.0 h since new or 5 years since manufacture",
                       "60.0 h since fitting", "30.0 h after 2026-01-10", "960.0 h since new or 100 landings since fitting"))


def begin_fitted(world):
    """Inside out, or outside in: the order in which things are put together changes nothing."""
    having = f", with {hours_text(HOURS[BLADE])} h since new, with 700 landings since new"
    moves = [lambda: world.fit(DISC, MODULE, "disc"), lambda: world.fit(MODULE, E1, "turbine"),
             lambda: world.fit(E1, KIT, "engine 1"), lambda: world.fit(E2, TWN, "engine 1"),
             lambda: world.fit(E3, TWN, "engine 2"),
             lambda: world.fit(BLADE, KIT, "hub", having)]
    if world.happens(0.5):
        moves.reverse()
    for move in moves:
        move()


def spare_blade(world):
    """The second blade comes on record when it is first needed."""
    if not getattr(world, "has_spare", False):
        world.has_spare = True
        world.on_day(f'{thing_text(SPARE)} brings forward 0.0 h.')
    return SPARE


def ordinary(world):
    """One ordinary happening."""
    aircraft = world.pick((KIT, KIT, TWN))
    share = world.chance.random()
    if share < 0.6:
        world.fly(aircraft)
        if world.happens(0.2):
            world.fly(aircraft)
    elif share < 0.68:
        first = world.day
        world.pass_days(2, 4)
        world.fly(aircraft, since=first)
    else:
        unusual(world, aircraft, share)


def unusual(world, aircraft, share):
    place = "engine 2" if aircraft == TWN and world.happens(0.5) else "engine 1"
    if share < 0.76:
        loads = ', 2 "hook loads"' if aircraft == KIT and world.happens(0.3) else ""
        world.on_day(f"{thing_text(aircraft)} {place} ran 0.2 h, 1 start{loads}.")
    elif share < 0.80:
        world.on_day(f"{thing_text(aircraft)} {place} tried 2 starts.")
    elif share < 0.83 and world.crafts[aircraft].meter is None:
        world.on_day(f"{thing_text(aircraft)} unaccounted 0.5 h.")
        world.crafts[aircraft].total += 1800 * 1000
    elif share < 0.88:
        world.on_day(f"{thing_text(world.pick((E1, E2, MODULE)))} overhauled.")
    elif share < 0.95 and BLADE in world.hosts:
        off_and_on(world, BLADE)
    else:
        world.fly(aircraft)


def off_and_on(world, thing):
    """Off for some days, and back where it was; the aircraft may fly meanwhile."""
    host, place = world.hosts[thing]
    world.remove(thing)
    world.pass_days(1, 3)
    if world.happens(0.5):
        world.fly(world.root(host) if world.root(host) in world.crafts else KIT)
        world.pass_days(1, 2)
    world.fit(thing, host, place)
