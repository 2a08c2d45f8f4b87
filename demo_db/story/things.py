"""The first pages: people, aircraft, engines, modules and parts, as brought forward."""

from paper import tenths

BEGIN = "2023-03-06"
END = "2026-03-04"
PEOPLE = (("A. Fenwick", "P-7731", "pilot"), ("J. Marrable", "P-8120", "pilot"),
          ("R. Ossory", "P-6604", "pilot"), ("D. Larch", "P-9017", "pilot"),
          ("B. Quill", "A-1234", "mechanic"), ("M. Tansley", "A-0907", "inspector"))


def begin_people(paper):
    paper.note("People and places")
    for name, certificate, kind in PEOPLE:
        paper.say(f'{BEGIN} person "{name}" holds certificate "{certificate}", kind "{kind}"')
    paper.say(f'{BEGIN} base "Sedge Landing" joins, days in "America/Denver"')


class Pages:
    """Writes what stands on the first pages of one aircraft."""

    def __init__(self, paper, craft):
        self.paper = paper
        self.craft = craft

    def say(self, words):
        return self.paper.say(f"{BEGIN} {words}")

    def aircraft(self, model, dates, landings):
        serial, made, certificate = dates
        craft = self.craft
        self.paper.note()
        self.paper.note(f"{craft.name}")
        self.say(f'{craft.subject()} is model "{model}", serial {serial}, made {made}, '
                 f"first certificate {certificate}")
        self.say(f"{craft.subject()} brings forward {craft.airframe()}, {landings}, "
                 f'{craft.meter} meter {tenths(craft.reading)}, basis "signed log, last page"')
        self.say(f"{craft.subject()} counts airframe hours from {craft.meter} meter")

    def places(self, required, optional=()):
        for place in required:
            self.say(f"{self.craft.subject()} has required place {place}")
        for place in optional:
            self.say(f"{self.craft.subject()} has optional place {place}")

    def engine_made(self, place, made):
        self.say(f"{self.craft.engines[place].name()} is made {made}")

    def engine(self, place, had):
        engine = self.craft.engines[place]
        self.say(f'{engine.name()} brings forward {had}, basis "engine log"')
        self.say(f"{engine.name()} fitted to {self.craft.subject()} {place}, "
                 f"{self.craft.airframe()}")

    def inside(self, part, what, host, had):
        """A part in another: what it is, what it had, where it sits."""
        self.say(f'part {part} is "{what}"')
        self.say(f'part {part} brings forward {had}, basis "{what} card"')
        self.say(f'part {part} fitted to {host} "{what}"')

    def part(self, part, what, had, place=None, made=""):
        self.say(f'part {part} is "{what}"' + (f", made {made}" if made else ""))
        words = "".join(f", with {amount}" for amount in had)
        self.say(f'part {part} fitted to {self.craft.subject()} "{place or what}", '
                 f"{self.craft.airframe()}{words}")


def sign_on_paper(paper):
    """A key of a machine that was lost at once; work signed on its sheet; what work counts."""
    key = "5b8d19c07e42f6a35b8d19c07e42f6a35b8d19c07e42f6a35b8d19c07e42f6a3"
    signer = 'by "B. Quill", certificate "A-1234", kind "mechanic"'
    work = paper.name_of("ZZ-LOW, airframe 3415.0 h")
    paper.say(f'{END} person "B. Quill" holds certificate "A-1234", kind "mechanic", key {key}')
    paper.say(f'{END} person "B. Quill" key {key} ends, because "laptop lost"')
    paper.say(f'{END} entry {work} signed on paper, page "Z 118", {signer}')
    paper.say(f'{END} record "Three Winters" counts work when recorded')


def begin_low(paper, craft):
    pages = Pages(paper, craft)
    pages.aircraft("Larkwing 5", (5031, "2014-05-20", "2014-07-01"), "3907 landings")
    pages.places(("engine 1", '"main rotor blade 1"', '"main rotor blade 2"', '"main gearbox"'),
                 ('"cargo hook"',))
    pages.engine_made("engine 1", "2016-02-11")
    pages.engine("engine 1",
                 "1480.6 h, 1702 starts, 1702 gas-generator cycles, 480.6 h since overhaul")
    pages.part("PN-4411 B-11", "main rotor blade",
               ("1422.0 h since new",), "main rotor blade 1")
    pages.part("PN-4411 B-12", "main rotor blade",
               ("1510.4 h since new",), "main rotor blade 2")
    pages.part("GB-12 G-11", "main gearbox",
               ("2841.2 h since new", "1120.0 h since overhaul", "31 torque events since overhaul"))
    pages.part("HK-3 H-1", "cargo hook", ("1210 lifts since new",))
    pages.part("BAT-1 L-11", "emergency beacon battery", (), made="2022-09-01")
    paper.note("A spare of which nobody knows the hours; it lies on the shelf.")
    pages.say('part PN-4411 B-95 is "main rotor blade"')
    pages.say("part PN-4411 B-95 brings forward hours unknown, "
              'remark "came with the aircraft, without its card"')


def begin_fen(paper, craft):
    pages = Pages(paper, craft)
    pages.aircraft("Larkwing 5", (5044, "2017-10-02", "2017-11-20"), "2411 landings")
    pages.places(("engine 1", '"main rotor blade 1"', '"main rotor blade 2"', '"main gearbox"'),
                 ('"bucket frame"',))
    pages.engine_made("engine 1", "2017-08-30")
    pages.inside("MOD-2 M-61", "turbine module", "engine TS-40 E-3002",
                 "2210.0 h, 1010.0 h since overhaul, 2600 gas-generator cycles")
    pages.inside("T1 D-91", "first disc", "part MOD-2 M-61", "5290.0 h, 7300 gas-generator cycles")
    pages.engine("engine 1",
                 "1990.6 h, 2388 starts, 2388 gas-generator cycles, 1010.0 h since overhaul")
    pages.part("PN-4411 B-21", "main rotor blade",
               ("998.1 h since new",), "main rotor blade 1")
    pages.part("PN-4411 B-22", "main rotor blade",
               ("1990.6 h since new",), "main rotor blade 2")
    pages.part("GB-12 G-21", "main gearbox",
               ("1990.6 h since new", "1990.6 h since overhaul", "12 torque events since overhaul"))
    pages.part("SH-7 S-21", "skid shoes", ("140 run-on landings since new",))
    pages.part("BK-1 K-2", "bucket frame", ('2210 "bucket drops" since new',))
    pages.part("SB-2 A-5", "starter battery", (), made="2022-12-12")
    pages.part("FL-9 F-1", "inlet filter", ())


def begin_two(paper, craft):
    pages = Pages(paper, craft)
    pages.aircraft("Stiltwing 2", (209, "2009-03-14", "2009-06-01"), "6120 landings")
    pages.places(("engine 1", "engine 2", '"main gearbox"'), ('"hoist"',))
    pages.engine_made("engine 1", "2012-01-19")
    pages.engine_made("engine 2", "2009-02-02")
    pages.inside("P4 D-42", "power turbine disc", "engine TS-62 E-4002",
                 "4127.5 h, 7640 power-turbine cycles")
    pages.engine("engine 1", "3302.4 h, 3901 starts, 702.4 h since overhaul")
    pages.engine("engine 2", "4127.5 h, 5011 starts, 1627.5 h since overhaul")
    pages.part("GB-62 G-31", "main gearbox",
               ("4127.5 h since new", "1127.5 h since overhaul"))
    pages.part("HO-5 H-9", "hoist", ("760 hoist lifts since overhaul",))
    pages.part("DM-8 D-3", "pylon damper", ("2980 transitions since new",))


def begin_tur(paper, craft):
    pages = Pages(paper, craft)
    pages.aircraft("Ganderel 1", (77, "2006-09-09", "2006-12-01"), "7010 landings, 6204 flights")
    pages.places(("engine 1", '"propeller"'))
    pages.engine_made("engine 1", "2006-08-01")
    pages.inside("W3 D-51", "compressor wheel", "engine TP-9 E-5001",
                 "6033.0 h, 6204 full cycles, 1890 abbreviated cycles, 7956.5 cycles")
    pages.engine("engine 1",
                 "6033.0 h, 6204 starts, 7956.5 cycles, 1533.0 h since overhaul")
    pages.say('part PR-55 P-51 is "propeller"')
    paper.say('2021-11-02 part PR-55 P-51 overhauled, paper "release 51-21"')
    pages.say('part PR-55 P-51 brings forward 611.0 h since overhaul, basis "propeller log"')
    pages.say(f'part PR-55 P-51 fitted to {craft.subject()} "propeller", {craft.airframe()}')
    pages.part("ST-4 S-8", "starter generator", ("404 starts since overhaul",))
    pages.part("LG-2 L-8", "landing gear", ("1204 flights since overhaul",))
