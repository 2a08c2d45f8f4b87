-- What is worked out from the entries, kept only to answer quickly. It may be dropped and made anew
-- at any time, which is what this file does; the program tells first which digests of arrivals did
-- not fit. entry is a place in arrived.
DROP TABLE IF EXISTS use;
DROP TABLE IF EXISTS running_total;
DROP TABLE IF EXISTS series;
DROP TABLE IF EXISTS reading;
DROP TABLE IF EXISTS start_reading;
DROP TABLE IF EXISTS mention;
DROP TABLE IF EXISTS proof;
DROP TABLE IF EXISTS arrival_digest;
DROP TABLE IF EXISTS thing;

-- What is counted: one key ("hours", "meter collective", "starts") of an airframe (place empty) or
-- of one of its places.
CREATE TABLE series (
  id       INTEGER PRIMARY KEY,
  aircraft TEXT NOT NULL,
  place    TEXT NOT NULL,
  key      TEXT NOT NULL,
  UNIQUE (aircraft, place, key)
) STRICT;

-- One amount of use by one standing entry. Hours and meters in thousandths of a second after the
-- factor, counts in thousandths. sureness: 0 exact, 1 by default, 2 at least, 3 unknown.
CREATE TABLE use (
  series   INTEGER NOT NULL REFERENCES series,
  day      INTEGER NOT NULL,  -- days since 1970-01-01
  ordinal  INTEGER NOT NULL,  -- order within the day
  entry    INTEGER NOT NULL REFERENCES arrived,
  amount   INTEGER NOT NULL,
  sureness INTEGER NOT NULL CHECK (sureness BETWEEN 0 AND 3),
  PRIMARY KEY (series, day, ordinal, entry)
) STRICT, WITHOUT ROWID;

-- All use of a series up to the end of a day. What was brought forward is not in it.
CREATE TABLE running_total (
  series   INTEGER NOT NULL REFERENCES series,
  day      INTEGER NOT NULL,
  total    INTEGER NOT NULL,
  sureness INTEGER NOT NULL CHECK (sureness BETWEEN 0 AND 3),
  PRIMARY KEY (series, day)
) STRICT, WITHOUT ROWID;

-- What the entries are about, spelled as in the frame: engine:TS-40:E-1001.
CREATE TABLE thing (
  id   INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE
) STRICT;

-- Every entry that is neither use nor a reading, under each thing that it is about. The day is the
-- day of its sentence, and the order within it the order of arrival.
CREATE TABLE mention (
  thing INTEGER NOT NULL REFERENCES thing,
  day   INTEGER NOT NULL,
  entry INTEGER NOT NULL REFERENCES arrived,
  kind  TEXT    NOT NULL,
  PRIMARY KEY (thing, day, entry)
) STRICT, WITHOUT ROWID;

-- What the gauges showed in cruise, at idle, in a power check; empty where nothing was said.
-- Temperatures in tenths of a degree C, decimals in thousandths of their unit.
CREATE TABLE reading (
  thing          INTEGER NOT NULL REFERENCES thing,  -- the aircraft
  place          TEXT    NOT NULL,
  day            INTEGER NOT NULL,
  entry          INTEGER NOT NULL REFERENCES arrived,
  check_kind     INTEGER NOT NULL,
  altitude_feet  INTEGER,
  outside_air    INTEGER,
  torque         INTEGER,
  torque_unit    INTEGER,
  gas_generator  INTEGER,
  temperature    INTEGER,
  fuel           INTEGER,
  fuel_unit      INTEGER,
  engine_seconds INTEGER,
  PRIMARY KEY (thing, place, day, entry)
) STRICT, WITHOUT ROWID;

-- What the gauges showed in a start. It counts nothing.
CREATE TABLE start_reading (
  thing             INTEGER NOT NULL REFERENCES thing,  -- the aircraft
  place             TEXT    NOT NULL,
  day               INTEGER NOT NULL,
  entry             INTEGER NOT NULL REFERENCES arrived,
  battery           INTEGER,
  lowest            INTEGER,
  outside_air       INTEGER,
  residual          INTEGER,
  peak              INTEGER,
  light_off_seconds INTEGER,
  idle_seconds      INTEGER,
  generator         INTEGER,
  starter_out       INTEGER,
  PRIMARY KEY (thing, place, day, entry)
) STRICT, WITHOUT ROWID;

-- With which key the signature of an entry was proved, so that answers need not prove it again.
-- Signatures that fit no key on record have no row here.
CREATE TABLE proof (
  entry INTEGER PRIMARY KEY REFERENCES arrived,
  key   TEXT NOT NULL CHECK (length(key) = 64)
) STRICT;

-- The first eight bytes of a digest of each row of arrived, which no chain holds: it tells of a bit
-- that turned over there. Made anew it is of what stands then.
CREATE TABLE arrival_digest (
  entry  INTEGER PRIMARY KEY REFERENCES arrived,
  digest BLOB NOT NULL CHECK (length(digest) = 8)
) STRICT;
