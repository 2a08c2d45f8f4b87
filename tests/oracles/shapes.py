"""The twelve hard shapes. Each inserts its happenings into a world that stays true, and each has a
rule that can be switched off: it bites in a history if the answers without the rule differ."""

import random

from amounts import hours_text
from days import Walk
from fleet import begin, blade_limit, ordinary, spare_blade
from sentences import thing_text
from world import BLADE, DISC, E1, E2, E3, ENGINES, KIT, MODULE, SPARE, TENTH, TWN, World


def same_day_swap(world):
    """Off and on between two flights of one day, told by totals, by clock, by the meter or by the
    writing; before or after all flights, told by these words; or by nothing, when another base
    flew."""
    if world.happens(0.2):
        return engines_swapped(world)
    thing, instead = pair_to_swap(world)
    how = world.pick(("totals", "totals", "clock", "clock", "writing", "words", "meter",
                      "two bases"))
    aircraft = world.root(thing)
    craft = world.crafts[aircraft]
    if how == "clock":
        world.by_clock()
    first = len(world.lines)
    flight = world.fly(aircraft)
    share = {"totals": 1.0}.get(how, 0.0)
    if how == "words":
        share = world.pick((", before the first flight", ", after the last flight"))
    if how == "meter" and craft.meter is not None and not craft.is_dead:
        share = f", collective meter {hours_text(craft.meter)}"
    move(world, thing, instead, share)
    last = world.fly(aircraft)
    world.end_day()
    if how == "two bases":
        flown_by_another(world, flight, last)
    elif how == "words" or "meter" in str(share):
        today = world.lines[first:]
        world.lines[first:] = [today[at] for at in world.pick(((0, 3, 1, 2), (1, 2, 0, 3)))]
    return None


def move(world, thing, instead, share):
    host, place = world.hosts[thing]
    world.remove(thing, share)
    world.fit(instead, host, place, share=share)


def flown_by_another(world, flight, last):
    """The first flight is of another base; the one that fits and removes hears of it only later,
    before it writes what it flies some days on."""
    flight.base, flight.hears = "M", True
    world.lines.remove(last)
    world.crafts[world.root_named(last)].total -= last.service
    world.pass_days()
    world.fly(world.root_named(last)).hears = True


def engines_swapped(world):
    """Two engines change places between two aircraft, which both fly before and after."""
    where = world.hosts.get(E1), world.hosts.get(E2)
    if where[0] is None or where[1] is None or where[0][0] == where[1][0]:
        return ordinary(world)
    world.fly(KIT)
    world.fly(TWN)
    for engine in (E1, E2):
        world.remove(engine)
    for engine, (host, place) in zip((E1, E2), reversed(where)):
        world.fit(engine, host, place)
    world.fly(TWN)
    return world.fly(KIT)


def pair_to_swap(world):
    """What is on an aircraft, and what can take its place."""
    spare_blade(world)
    fitted = [blade for blade in (BLADE, SPARE) if blade in world.hosts]
    if len(fitted) == 2:
        world.remove(SPARE)
        world.pass_days()
    elif not fitted:
        fit_somewhere(world, BLADE)
        world.pass_days()
    return (SPARE, BLADE) if fitted == [SPARE] else (BLADE, SPARE)


def fit_somewhere(world, thing):
    """A blade into the first free hub."""
    for aircraft in (KIT, TWN):
        if world.in_place(aircraft, "hub") is None:
            return world.fit(thing, aircraft, "hub")
    return world.fit(thing, KIT, "hub 2")


def late_flight(world):
    """A flight that is entered only after a later removal or fitting that states the total."""
    thing = world.pick([thing for thing in (BLADE, E1, E2) if thing in world.hosts] or [E3])
    if world.root(thing) not in world.crafts:
        return ordinary(world)
    if world.happens(0.3):
        return late_work(world, thing)
    world.fly_root(thing, held_back=True)
    world.pass_days()
    host, place = world.hosts[thing]
    world.remove(thing, share=1.0)
    if world.happens(0.5):
        world.write_what_was_held_back()
    world.pass_days()
    world.fit(thing, host, place)
    return world.write_what_was_held_back()


def late_work(world, thing):
    """Off and back on other days than those of flights, told only after later flights."""
    host, place = world.hosts[thing]
    world.pass_days(2, 4)
    late = [world.remove(thing, 0.0)]
    flown = world.fly_later(host)
    world.pass_days(1, 3)
    late.append(world.fit(thing, host, place, share=0.0))
    world.pass_days(1, 3)
    world.fly(world.root(host))
    for line in late:
        world.lines.remove(line)
    world.lines += late
    return flown


def free_engine(world, not_this):
    """An engine without a module in it."""
    return world.pick([engine for engine in ENGINES
                       if engine != not_this and world.in_place(engine, "turbine") is None])


def nested_move(world):
    """The module goes to another engine with its disc; sometimes the disc moves on the shelf."""
    if world.happens(0.5):
        world.fly_root(MODULE)
    source = world.hosts[MODULE][0] if MODULE in world.hosts else None
    if source:
        world.remove(MODULE)
    if world.happens(0.5) and DISC in world.hosts:
        world.remove(DISC)
        world.pass_days()
        world.fit(DISC, MODULE, "disc")
    world.pass_days(0, 3)
    world.fit(MODULE, free_engine(world, source), "turbine")
    world.fly_root(MODULE)
    world.pass_days()
    world.fly_root(MODULE)


def loan(world):
    """An engine or a blade goes to the other aircraft and comes back, with or without figures."""
    thing = world.pick((E1, E2, BLADE))
    if thing not in world.hosts or world.root(thing) not in world.crafts:
        return ordinary(world)
    home, place = world.hosts[thing]
    other = TWN if home == KIT else KIT
    there = place if thing != BLADE else "hub"
    sitting = world.in_place(other, there)
    if sitting:
        world.remove(sitting)
    world.remove(thing)
    world.pass_days(0, 2)
    world.fit(thing, other, there, having(world, thing))
    for _ in range(world.whole(1, 3)):
        world.fly(other)
        world.pass_days(1, 2)
    world.remove(thing)
    if sitting:
        world.fit(sitting, other, there)
    world.fly(home)
    world.pass_days(1, 2)
    world.fit(thing, home, place, having(world, thing))
    return world.fly(home)


def having(world, thing):
    """What the papers of a loan say, which is what the book says; or nothing."""
    if world.happens(0.6):
        return ""
    state = Walk(world.book(), world.day).state
    hours, starts = (state.figure("new", thing, clock) for clock in ("h", "starts"))
    text = f", with {hours_text(hours[0] // 1000)} h since new" \
        if hours[1] == 0 and hours[0] % 1000 == 0 else ""
    if thing != BLADE and starts[1] == 0:
        text += f", with {starts[0] // 1000} starts since new"
    return text


def corrected_fit(world):
    """Fitted, as it seems, on a wrong day or in a wrong place; told right some flights later."""
    thing = spare_blade(world)
    if thing in world.hosts:
        world.remove(thing)
    world.pass_days()
    wrong_day = world.day
    right = world.pick((KIT, TWN))
    wrong = right if world.happens(0.5) else (KIT if right == TWN else TWN)
    place = "hub 3"
    line = world.fit(thing, wrong, place, share=1.0 if wrong == right else 0.0)
    world.pass_days(1, 2)
    world.fly(right)
    world.pass_days(1, 2)
    right_day = world.day if wrong == right else wrong_day
    world.pass_days(1, 2)
    world.fly(right)
    if wrong != right:
        world.fly(wrong)
    world.hosts[thing] = (right, place)
    world.correct(line, f'{right_day} {thing_text(thing)} fitted to {thing_text(right)} "{place}".')
    if world.happens(0.5):
        world.fly(right)


def struck_removal(world):
    """A removal that never was: struck after some flights; sometimes the strike is struck."""
    thing = world.pick([thing for thing in (BLADE, E1, MODULE, DISC) if thing in world.hosts])
    where = world.hosts[thing]
    root = world.root(thing)
    line = world.remove(thing)
    aircraft = root if root in world.crafts else KIT
    world.pass_days()
    world.fly(aircraft)
    world.pass_days(0, 3)
    strike = world.strike(line)
    world.hosts[thing] = where
    world.fly(aircraft)
    if world.happens(0.3):
        flown = world.fly(aircraft)
        world.strike(flown)
        world.crafts[aircraft].total -= flown.service
    if world.happens(0.25):
        second = world.strike(strike)
        del world.hosts[thing]
        if world.happens(0.5):
            world.strike(second)
            world.hosts[thing] = where


def meter_change(world):
    """A new meter within a stay, between two flights of a day that are written in any order."""
    craft = world.crafts[KIT]
    if craft.meter is None or craft.is_dead:
        return world.fly(KIT)
    world.fly(KIT)
    world.pass_days()
    before = len(world.lines)
    world.fly(KIT)
    fresh = world.pick((0, 12 * 3600, 500 * 3600))
    line = world.on_day(f"{thing_text(KIT)} changed collective meter, out "
                        f"{hours_text(craft.meter)}, in {hours_text(fresh)}.")
    craft.meter = fresh
    if BLADE in world.hosts and world.root(BLADE) == KIT and world.happens(0.5):
        world.remove(BLADE, share=1.0)
    world.fly(KIT)
    if world.happens(0.3):
        today = [other for other in world.lines[before:] if " flew " in other.text]
        keep = [other for other in world.lines[before:] if " flew " not in other.text]
        if keep == [line]:
            world.lines[before:] = [line] + today[::-1]
    world.pass_days()
    return world.fly(KIT)


def dead_meter(world):
    """The meter stops; some flights by the clock; a new meter, or the old one mended."""
    craft = world.crafts[KIT]
    if craft.meter is None or craft.is_dead:
        return world.fly(KIT)
    world.on_day(f"{thing_text(KIT)} lost collective meter at {hours_text(craft.meter)}.")
    craft.is_dead = True
    for _ in range(world.whole(1, 3)):
        world.pass_days(1, 2)
        world.fly(KIT)
    world.pass_days(1, 2)
    if world.happens(0.8):
        world.on_day(f"{thing_text(KIT)} changed collective meter, out "
                     f"{hours_text(craft.meter)}, in 0.0.")
        craft.meter, craft.is_dead = 0, False
        world.pass_days(1, 2)
    return world.fly(KIT)


def unknown_child(world):
    """Of a disc inside not everything is known (fleet.disc_has); it flies."""
    world.fly_root(DISC)


def changed_limit(world):
    """A limit is lowered from a day on, or differs from model to model."""
    if world.happens(0.35) and not hasattr(world, "blade_limit"):
        return two_models(world)
    if not hasattr(world, "blade_limit"):
        world.blade_limit = world.on_day("part number PN-4411 retires at 2200.0 h since new.")
        world.fly(KIT)
        world.pass_days()
    source = world.pick(("", ", class airworthiness limitation", ', source "limitations rev 2"'))
    world.blade_limit = world.on_day(
        f"part number PN-4411 retires at {blade_limit(world)}{source}, instead of entry {{}}.",
        world.blade_limit)
    if world.happens(0.2):
        world.fly_root(BLADE)
        world.strike(world.blade_limit)
    return world.fly_root(BLADE)


def two_models(world):
    for model, hours in (("Larkwing 5", 2000), ("Heron 2", world.pick((950, 1500)))):
        world.on_day(f'part number PN-4411 retires at {hours}.0 h since new, on model "{model}".')
    world.blade_limit = world.lines[-1]
    world.fly_root(BLADE)
    world.pass_days()
    if BLADE in world.hosts:
        world.remove(BLADE)
    other = TWN if world.happens(0.7) else KIT
    world.fit(BLADE, other, "hub 4")
    world.fly(other)


def recount(world):
    """The cycles of an engine model are counted by another rule from some earlier day on."""
    since = world.pick(("2026-01-01", "2026-01-05", str(world.day)))
    if world.spans and world.happens(0.4):
        since = str(max(world.spans))  # within the newest flight of several days, or at its end
    world.fly_root(world.pick((E1, E2)))
    world.pass_days(1, 3)
    weights = world.pick(("1.5 each start", "2 each flight", "1 each start, 0.25 each landing",
                          "0.1 each start"))
    if world.happens(0.25):
        world.on_day(f"part number DI-3 counts cycles, {weights}, also for flights since {since}.")
    also = f", also for flights since {since}" if world.happens(0.85) else ""
    replaced = world.happens(0.85)
    world.rule = world.on_day(
        f"model TS-40 counts cycles, {weights}, source \"directive 95-10-04\"{also}"
        + (", instead of entry {}." if replaced else "."), *([world.rule] if replaced else []))
    world.fly_root(world.pick((E1, E2)))


def two_corrections(world):
    """A flight is corrected twice: one after the other, or by two bases that did not know."""
    line = world.fly(KIT)
    world.pass_days()
    first = correct_hours(world, line, None)
    if world.happens(0.2):
        return correct_apart(world, line, first)
    world.pass_days(0, 2)
    second = correct_hours(world, line, first)
    if world.happens(0.25):
        before = world.crafts[KIT].total - second.service
        strike = world.strike(second)
        if world.happens(0.5):
            world.strike(strike)
        else:
            world.crafts[KIT].total = before + first.service
    second.names_shape = "two corrections"
    return world.fly(KIT)


def correct_hours(world, line, newest):
    """The same flight with other hours and counts; its meter is left out."""
    craft = world.crafts[KIT]
    seconds = world.whole(1, 8) * 5 * TENTH
    by_clock = ", by clock" * line.by_clock
    day = world.free_day(line) if newest is None and world.happens(0.3) else line.text[:10]
    if newest is not None:
        day = newest.said_day
    text = (f"{day} {thing_text(KIT)} flew {hours_text(seconds)} h, "
            f"{world.whole(2, 4)} starts, {world.whole(2, 5)} landings{by_clock}.")
    made = world.correct(line, text, newest)
    made.service = craft.service(seconds, line.by_clock)
    made.by_clock = line.by_clock
    made.said_day = day
    craft.total += made.service - (newest or line).service
    return made


def correct_apart(world, line, first):
    """Another base, which had heard of the flight only, corrects it as well."""
    total = world.crafts[KIT].total
    other = correct_hours(world, line, None)
    other.base, other.hears = "M", True
    at = world.lines.index(first)
    world.lines.remove(other)
    world.lines.insert(at, other)
    other.names_shape = "two corrections"
    world.crafts[KIT].total = total
    return world.fly(KIT)


SHAPES = {
    "same-day swap": same_day_swap, "late flight": late_flight, "nested move": nested_move,
    "loan": loan, "corrected fit": corrected_fit, "struck removal": struck_removal,
    "meter change": meter_change, "dead meter": dead_meter, "unknown child": unknown_child,
    "changed limit": changed_limit, "recount": recount, "two corrections": two_corrections,
}


def drawn(number):
    """The shapes of a history: one for certain, each further one with a chance of one in eight."""
    names = list(SHAPES)
    chance = random.Random(-number - 1)
    certain = names[number % len(names)]
    return [name for name in names if name == certain or chance.random() < 1 / 8]


def make(number):
    """The history of that number."""
    shapes = drawn(number)
    world = World(number, shapes)
    begin(world)
    steps = [SHAPES[name] for name in shapes]
    steps += [ordinary] * max(2, world.whole(8, 12) - 2 * len(steps))
    world.chance.shuffle(steps)
    for step in steps:
        world.pass_days()
        step(world)
    world.pass_days(1, 3)
    world.fly(KIT)
    world.fly(TWN)
    history = world.history()
    history.lines_of_shape = {
        name: [history.names[line] for line in world.lines
               if line.names_shape == name or name == "dead meter" and ", by clock" in line.text]
        for name in ("dead meter", "two corrections")}
    return history
