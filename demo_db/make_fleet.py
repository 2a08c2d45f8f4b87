#!/usr/bin/env python3
"""Writes fleet.record: five months of an invented operator, one sentence a line.

The chance in it is fixed, so the same file comes out every time:

    python3 demo_db/make_fleet.py > demo_db/fleet.record

Everything is invented: aircraft, makers, part numbers, limits, sources, people.
"""

import datetime
import random

# The short name of the book's writer and the number of its first entry after `new`, as
# `timeworn new "Marrow Point" --for-tests --clock 2026-03-05T08:00:00Z --seed 7` gives them.
WRITER = "0GHWF"
FIRST_NUMBER = 2

BEGIN = datetime.date(2025, 10, 1)
LAST = datetime.date(2026, 3, 4)

chance = random.Random(20260304)
lines = []
entries = 0


def note(text=""):
    lines.append(f"# {text}" if text else "")


def say(sentence):
    """Adds a sentence; gives the name that its entry will have."""
    global entries
    lines.append(sentence + ".")
    entries += 1
    return f"{WRITER}-{FIRST_NUMBER + entries - 1}"


def tenths(number):
    """1.7 from 17 tenths."""
    return f"{number // 10}.{number % 10}"


def counted(number, noun):
    return f"{number} {noun}" + ("" if number == 1 else "s")


class Aircraft:
    """Where an aircraft stands: hours and meter in tenths, what it has flown."""

    def __init__(self, name, meter, hours, reading):
        self.name = name
        self.meter = meter
        self.hours = hours
        self.reading = reading
        self.flights = 0

    def airframe(self):
        return f"airframe {tenths(self.hours)} h"

    def fly(self, day, length, words, before=0):
        """A flight of so many tenths; `before` tenths are missing on the meter."""
        start = self.reading + before
        self.reading = start + length
        self.hours += length
        self.flights += 1
        return (f"{day} aircraft {self.name} flew {tenths(length)} h, {words}, "
                f"{self.meter} meter {tenths(start)} to {tenths(self.reading)}")

    def change_meter(self, day, new_reading):
        say(f"{day} aircraft {self.name} changed {self.meter} meter, "
            f"out {tenths(self.reading)}, in {tenths(new_reading)}")
        self.reading = new_reading


kit = Aircraft("ZZ-KIT", "collective", 42187, 11316)
twin = Aircraft("ZZ-TWN", '"flight"', 52100, 33420)


def begin_people():
    note("People and rules")
    say(f'{BEGIN} person "A. Fenwick" holds certificate "P-7731", kind "pilot"')
    say(f'{BEGIN} person "B. Quill" holds certificate "A-1234", kind "mechanic"')
    say(f'{BEGIN} person "M. Tansley" holds certificate "A-0907", kind "inspector"')
    say(f'{BEGIN} base "Marrow Point" joins, days in "America/Denver"')


def fit_part(part, host, place, what, rest):
    number_and_serial, words = part
    say(f'{BEGIN} part {number_and_serial} is "{words}"')
    say(f'{BEGIN} part {number_and_serial} fitted to {host} "{place}", {what}{rest}')


def begin_kit():
    note()
    note("ZZ-KIT, a light single-turbine helicopter")
    say(f'{BEGIN} aircraft ZZ-KIT is model "Larkwing 5", serial 5012, made 2016-03-14, '
        "first certificate 2016-04-02")
    say(f"{BEGIN} aircraft ZZ-KIT brings forward airframe {tenths(kit.hours)} h, 5402 landings, "
        f'collective meter {tenths(kit.reading)}, basis "signed log 3 page 41"')
    say(f"{BEGIN} aircraft ZZ-KIT counts airframe hours from collective meter")
    for place in ("engine 1", '"main rotor blade 1"', '"main rotor blade 2"', '"main gearbox"'):
        say(f"{BEGIN} aircraft ZZ-KIT has required place {place}")
    say(f'{BEGIN} aircraft ZZ-KIT has optional place "cargo hook"')
    say(f"{BEGIN} engine TS-40 E-1001 is made 2017-11-02")
    say(f"{BEGIN} engine TS-40 E-1001 brings forward 1717.5 h, 1998 starts, "
        '2107.35 gas-generator cycles, 217.5 h since overhaul, basis "engine log 1"')
    say(f'{BEGIN} part MOD-2 M-4 is "turbine module"')
    say(f"{BEGIN} part MOD-2 M-4 brings forward 5310.0 h, 3010.0 h since overhaul, "
        '6010 gas-generator cycles, basis "module card"')
    say(f'{BEGIN} part T1 D-77 is "turbine disc"')
    say(f"{BEGIN} part T1 D-77 brings forward 5772.0 h, 6890 gas-generator cycles, "
        'basis "disc card"')
    say(f'{BEGIN} part T1 D-77 fitted to part MOD-2 M-4 "first stage"')
    say(f'{BEGIN} part MOD-2 M-4 fitted to engine TS-40 E-1001 "turbine module"')
    say(f"{BEGIN} engine TS-40 E-1001 fitted to aircraft ZZ-KIT engine 1, {kit.airframe()}")
    host, at = "aircraft ZZ-KIT", kit.airframe()
    fit_part(("PN-4411 B-88", "main rotor blade"), host, "main rotor blade 1", at,
             ", with 2056.1 h since new")
    fit_part(("PN-4411 B-89", "main rotor blade"), host, "main rotor blade 2", at,
             ", with 1410.0 h since new")
    fit_part(("GB-12 G-3", "main gearbox"), host, "main gearbox", at,
             ", with 2900.4 h since new, with 1650.2 h since overhaul")
    fit_part(("TB-7 S-31", "tail rotor bolts"), host, "tail rotor bolts", at,
             ", with 1900.0 h since new, with 4580 landings since new")
    say(f'{BEGIN} part BAT-1 L-9 is "emergency beacon battery", made 2022-05-01')
    say(f'{BEGIN} part BAT-1 L-9 fitted to {host} "emergency beacon battery", {at}')


def begin_twin():
    note()
    note("ZZ-TWN, a small twin turboprop with engines of unequal age")
    say(f'{BEGIN} aircraft ZZ-TWN is model "Heron 2", serial 114, made 2008-06-30, '
        "first certificate 2008-08-11")
    say(f"{BEGIN} aircraft ZZ-TWN brings forward airframe {tenths(twin.hours)} h, 8120 landings, "
        f'"flight" meter {tenths(twin.reading)}, basis "signed log 9 page 12"')
    say(f'{BEGIN} aircraft ZZ-TWN counts airframe hours from "flight" meter')
    for place in ("engine 1", "engine 2", '"propeller 1"', '"propeller 2"'):
        say(f"{BEGIN} aircraft ZZ-TWN has required place {place}")
    say(f"{BEGIN} engine TP-9 E-2001 brings forward 4870.3 h, 6011 starts, "
        '1120.3 h since overhaul, basis "engine log 4"')
    say(f"{BEGIN} engine TP-9 E-2002 brings forward 2006.9 h, 2544 starts, "
        '2006.9 h since overhaul, basis "engine log 2"')
    say(f"{BEGIN} engine TP-9 E-2001 fitted to aircraft ZZ-TWN engine 1, {twin.airframe()}")
    say(f"{BEGIN} engine TP-9 E-2002 fitted to aircraft ZZ-TWN engine 2, {twin.airframe()}")
    for number, serial, since in ((1, "P-501", "1480.0"), (2, "P-502", "820.5")):
        say(f'{BEGIN} part PR-55 {serial} is "propeller"')
        say(f'2022-04-20 part PR-55 {serial} overhauled, paper "release {number}-22"')
        say(f"{BEGIN} part PR-55 {serial} brings forward {since} h since overhaul, "
            'basis "propeller log"')
        say(f'{BEGIN} part PR-55 {serial} fitted to aircraft ZZ-TWN "propeller {number}", '
            f"{twin.airframe()}")


def begin_limits():
    note()
    note("What the approved data ask for (all of it invented)")
    model = 'source "TS-40 manual 5-10"'
    say(f"{BEGIN} model TS-40 overhaul at 3500.0 h since overhaul, class overhaul, {model}")
    say(f"{BEGIN} part number MOD-2 overhaul at 3500.0 h since overhaul, class overhaul, {model}")
    say(f"{BEGIN} part number T1 retires at 6000.0 h since new or "
        f"9000 gas-generator cycles since new, class life, {model}")
    say(f"{BEGIN} model TS-40 counts gas-generator cycles, 1 each start, "
        'source "TS-40 manual 5-20"')
    limits = 'source "Larkwing 5 limitations rev 4"'
    say(f"{BEGIN} part number PN-4411 retires at 2200.0 h since new, "
        f"class airworthiness limitation, {limits}")
    say(f"{BEGIN} part number TB-7 retires at 5000 landings since new, "
        f"class airworthiness limitation, {limits}")
    say(f"{BEGIN} part number GB-12 overhaul at 3000.0 h since overhaul, class overhaul, "
        'source "Larkwing 5 manual 5-10"')
    say(f"{BEGIN} part number BAT-1 retires at 5 years since manufacture, class shelf, "
        'source "beacon card"')
    say(f"{BEGIN} model TP-9 overhaul at 3600.0 h since overhaul, class overhaul, "
        'source "TP-9 manual 5-10"')
    say(f"{BEGIN} part number PR-55 overhaul at 3000.0 h since overhaul or "
        '5 years since overhaul, class overhaul, source "propeller manual 61-10"')
    say(f'{BEGIN} model TS-40 cruise limit 720 C, source "flight manual 5-2"')
    say(f'{BEGIN} model TS-40 idle limit 560 C, source "flight manual 5-2"')
    say(f'{BEGIN} model TP-9 cruise limit 790 C, source "TP-9 flight manual 4-1"')
    say(f"{BEGIN} model TS-40 trend, floor 10 C, serial correlation 0")
    say(f"{BEGIN} model TP-9 trend, floor 10 C, serial correlation 0")


def begin_tasks():
    note()
    note("What is to be done, and when it was done before this book")
    say(f'{BEGIN} inspection "annual inspection" on aircraft ZZ-KIT every 12 calendar months, '
        'source "14 CFR 91.409"')
    say(f'{BEGIN} inspection "100-hour inspection" on aircraft ZZ-KIT every 100.0 h since done, '
        'excess counts, over 10.0 h to reach the shop, source "14 CFR 91.409"')
    say(f"{BEGIN} directive D-26-04 on aircraft ZZ-KIT every 50.0 h since done, "
        'source "directive D-26-04", revision "1"')
    say(f'{BEGIN} service "300-hour service" on aircraft ZZ-KIT every 300.0 h or 12 months, '
        'source "Larkwing 5 manual 5-20"')
    say('2025-06-18 inspection "annual inspection" done on aircraft ZZ-KIT, airframe 4137.0 h, '
        'by "B. Quill", returned to service')
    say('2025-06-18 inspection "100-hour inspection" done on aircraft ZZ-KIT, '
        'airframe 4137.0 h, by "B. Quill"')
    say('2025-06-18 service "300-hour service" done on aircraft ZZ-KIT, airframe 4137.0 h, '
        'by "B. Quill"')
    say("2025-09-30 directive D-26-04 done on aircraft ZZ-KIT, airframe 4218.7 h, "
        'by "B. Quill"')
    say(f'{BEGIN} inspection "phase inspection" on aircraft ZZ-TWN every 150.0 h, next from due, '
        'source "Heron 2 programme"')
    say(f'{BEGIN} inspection "annual inspection" on aircraft ZZ-TWN every 12 calendar months, '
        'source "Heron 2 programme"')
    say('2025-09-12 inspection "phase inspection" done on aircraft ZZ-TWN, airframe 5201.4 h, '
        'by "B. Quill"')
    say('2025-09-12 inspection "annual inspection" done on aircraft ZZ-TWN, airframe 5201.4 h, '
        'by "B. Quill"')
    for name, revision in (("ZZ-KIT", "2025-09"), ("ZZ-TWN", "2025-09")):
        say(f'{BEGIN} aircraft {name} reviewed "directives and limitations", '
            f'revision "{revision}", by "M. Tansley"')


# Engine hours since the book began, in tenths, stand for wear: margins fall along them.
def kit_margin(day):
    washed = day >= datetime.date(2025, 12, 11)
    flown = (kit.hours - 42187) / 10
    level = 22.0 if not washed else 29.5
    return level - 0.045 * flown + chance.gauss(0, 0.7)


def twin_margin(place):
    flown = (twin.hours - 52100) / 10
    loss = {1: 0.002, 2: 0.085}[place]
    level = {1: 31.0, 2: 27.0}[place]
    return level - loss * flown + chance.gauss(0, 0.9)


def read_kit(day):
    temperature = 720 - round(kit_margin(day))
    say(f"{day} aircraft ZZ-KIT engine 1 E-1001 cruise 3500 ft, "
        f"outside air {chance.randint(-6, 16)} C, torque 78 %, "
        f"gas generator {tenths(chance.randint(958, 964))} %, temperature {temperature} C, "
        f"fuel {chance.randint(207, 214)} lb/h, bleed off, steady 5 min")


def read_twin(day):
    air = chance.randint(-18, 4)
    for place, serial in ((1, "E-2001"), (2, "E-2002")):
        temperature = 790 - round(twin_margin(place))
        say(f"{day} aircraft ZZ-TWN engine {place} {serial} cruise 12000 ft, "
            f"outside air {air} C, torque 82 %, temperature {temperature} C, bleed off, "
            "steady 5 min")


def start_kit(day):
    say(f"{day} aircraft ZZ-KIT engine 1 E-1001 started, "
        f"battery {tenths(chance.randint(251, 259))} V, "
        f"outside air {chance.randint(-6, 16)} C, peak {chance.randint(728, 752)} C, "
        f"idle in {chance.randint(22, 27)} s, generator {tenths(chance.randint(279, 282))} V")


def fly_kit(day):
    for _ in range(chance.choice((1, 2, 2, 3))):
        landings = chance.choice((1, 1, 2, 3))
        say(kit.fly(day, chance.choice((4, 5, 6, 7, 8, 9, 11, 14)),
                    f'1 start, {counted(landings, "landing")}') + ', pilot "A. Fenwick"')


def fly_twin(day):
    for _ in range(chance.choice((1, 2, 2))):
        say(twin.fly(day, chance.choice((8, 9, 11, 12, 13, 15, 17)), "1 start, 1 landing"))


def special_kit(day):
    """What happened to ZZ-KIT on its own days, before that day's flights."""
    if day == datetime.date(2025, 11, 3):
        say(f"{day} directive D-26-04 done on aircraft ZZ-KIT, {kit.airframe()}, "
            'by "B. Quill", before the first flight')
    if day == datetime.date(2025, 12, 11):
        note("11 December: shop day. Inspection, wash, new meter, ground run.")
        say(f'{day} inspection "100-hour inspection" done on aircraft ZZ-KIT, '
            f'{kit.airframe()}, by "B. Quill", returned to service')
        say(f"{day} engine TS-40 E-1001 washed")
        kit.change_meter(day, 3)
        say(f"{day} aircraft ZZ-KIT engine 1 E-1001 ran 0.3 h, 1 start")
    if day == datetime.date(2026, 1, 12):
        say(f"{day} directive D-26-04 done on aircraft ZZ-KIT, {kit.airframe()}, "
            'by "B. Quill", before the first flight')
    if day == datetime.date(2026, 2, 20):
        say(f'{day} aircraft ZZ-KIT reviewed "directives and limitations", '
            'revision "2026-02", by "M. Tansley"')


def correct_kit(day):
    """A flight typed with too few landings, put right two days later."""
    flight = kit.fly(day, 9, "1 start, 1 landing")
    name = say(flight)
    note("Put right two days later: three landings were left out.")
    say(f'{day + datetime.timedelta(days=2)} entry {name} corrected because '
        f'"three landings were left out": {flight.replace("1 landing,", "4 landings,")}')


def special_twin(day):
    if day == datetime.date(2025, 11, 19):
        note("A ground run entered for the wrong engine, struck, and said again.")
        name = say(f"{day} aircraft ZZ-TWN engine 1 E-2001 ran 0.2 h, 1 start")
        say(f'{day} entry {name} struck because "it was engine 2"')
        say(f"{day} aircraft ZZ-TWN engine 2 E-2002 ran 0.2 h, 1 start")
    if day == datetime.date(2025, 12, 17):
        note("Half an hour is missing on the meter; nobody knows of a flight.")
        say(twin.fly(day, 12, "1 start, 1 landing", before=5)
            + ', although "0.5 h are missing before this flight" '
              'because "an avionics test was not written down"')
    if day == datetime.date(2026, 1, 8):
        say(twin.fly(day, 11, "1 start on engine 1, 2 starts on engine 2, 1 landing")
            + ', remark "engine 2 took two starts"')
    if day == datetime.date(2026, 1, 10):
        say(f'{day} aircraft ZZ-TWN reviewed "directives and limitations", '
            'revision "2026-01", by "M. Tansley"')


def is_flying_day(day, weekdays):
    return day.weekday() in weekdays and chance.random() < 0.86


def live():
    day = BEGIN + datetime.timedelta(days=1)
    month = 0
    days_flown = 0
    while day <= LAST:
        if day.month != month:
            month = day.month
            note()
            note(f"{day:%B %Y}")
        special_kit(day)
        if day == datetime.date(2025, 11, 20):
            correct_kit(day)
        elif is_flying_day(day, (0, 2, 4)) and kit.flights < 108:
            days_flown += 1
            start_kit(day)
            fly_kit(day)
            if days_flown % 2 == 0:
                read_kit(day)
        special_twin(day)
        if is_flying_day(day, (1, 3, 5)) and twin.flights < 92:
            fly_twin(day)
            if chance.random() < 0.7:
                read_twin(day)
        day += datetime.timedelta(days=1)


def main():
    note("Marrow Point, an invented operator: five months of two aircraft, in the record language.")
    note("Made by make_fleet.py; README.md here tells the story.")
    note()
    begin_people()
    begin_kit()
    begin_twin()
    begin_limits()
    begin_tasks()
    live()
    print("\n".join(line.rstrip() for line in lines))


main()
