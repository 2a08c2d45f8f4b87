-- What this one book knows about itself. Append-only like the record, and never exchanged.

-- The writers under which this book was written, newest last: a new one is begun when the book is
-- found to be a copy, or to have been restored from an older copy.
CREATE TABLE own_writer (
  ordinal INTEGER PRIMARY KEY,
  writer  TEXT    NOT NULL CHECK (length(writer) = 26),
  begun   INTEGER NOT NULL  -- UTC, seconds since 1970
) STRICT;

-- When which entry came into this book. place counts arrivals; command counts the commands that
-- brought them. day is the civil day where the book then was, counted from 1970-01-01, so that
-- "known on" a day needs no time zone afterwards.
CREATE TABLE arrived (
  place   INTEGER PRIMARY KEY,
  command INTEGER NOT NULL,
  at      INTEGER NOT NULL,  -- UTC, seconds since 1970
  day     INTEGER NOT NULL,
  writer  TEXT    NOT NULL,
  number  INTEGER NOT NULL,
  digest  BLOB    NOT NULL CHECK (length(digest) = 32)
) STRICT;

-- What was printed, and what it counted, so that later news that changes a sheet can be told.
CREATE TABLE printed (
  place   INTEGER PRIMARY KEY,
  at      INTEGER NOT NULL,  -- UTC, seconds since 1970
  report  TEXT    NOT NULL,
  about   TEXT    NOT NULL,
  as_of   INTEGER NOT NULL,  -- days since 1970-01-01
  horizon TEXT    NOT NULL   -- K7QXM-130 M2ABC-88
) STRICT;

-- Lines that came from elsewhere and whose digest or signature does not hold. They count nothing.
CREATE TABLE quarantine (
  place INTEGER PRIMARY KEY,
  at    INTEGER NOT NULL,  -- UTC, seconds since 1970
  line  BLOB    NOT NULL,
  why   TEXT    NOT NULL
) STRICT;

CREATE TRIGGER own_writer_is_never_changed BEFORE UPDATE ON own_writer BEGIN
  SELECT RAISE(ABORT, 'the writers of a book are never changed');
END;
CREATE TRIGGER own_writer_is_never_removed BEFORE DELETE ON own_writer BEGIN
  SELECT RAISE(ABORT, 'the writers of a book are never removed');
END;
CREATE TRIGGER own_writer_is_begun_once BEFORE INSERT ON own_writer
  WHEN EXISTS (SELECT 1 FROM own_writer WHERE ordinal = NEW.ordinal OR writer = NEW.writer) BEGIN
  SELECT RAISE(ABORT, 'a writer is begun once');
END;

CREATE TRIGGER arrived_is_never_changed BEFORE UPDATE ON arrived BEGIN
  SELECT RAISE(ABORT, 'an arrival is never changed');
END;
CREATE TRIGGER arrived_is_never_removed BEFORE DELETE ON arrived BEGIN
  SELECT RAISE(ABORT, 'an arrival is never removed');
END;
CREATE TRIGGER arrived_stands_once BEFORE INSERT ON arrived
  WHEN EXISTS (SELECT 1 FROM arrived WHERE place = NEW.place) BEGIN
  SELECT RAISE(ABORT, 'the arrival is there already');
END;

CREATE TRIGGER printed_is_never_changed BEFORE UPDATE ON printed BEGIN
  SELECT RAISE(ABORT, 'what was printed is never changed');
END;
CREATE TRIGGER printed_is_never_removed BEFORE DELETE ON printed BEGIN
  SELECT RAISE(ABORT, 'what was printed is never removed');
END;
CREATE TRIGGER printed_stands_once BEFORE INSERT ON printed
  WHEN EXISTS (SELECT 1 FROM printed WHERE place = NEW.place) BEGIN
  SELECT RAISE(ABORT, 'the sheet is there already');
END;

CREATE TRIGGER quarantine_is_never_changed BEFORE UPDATE ON quarantine BEGIN
  SELECT RAISE(ABORT, 'a line in quarantine is never changed');
END;
CREATE TRIGGER quarantine_is_never_removed BEFORE DELETE ON quarantine BEGIN
  SELECT RAISE(ABORT, 'a line in quarantine is never removed');
END;
CREATE TRIGGER quarantine_stands_once BEFORE INSERT ON quarantine
  WHEN EXISTS (SELECT 1 FROM quarantine WHERE place = NEW.place) BEGIN
  SELECT RAISE(ABORT, 'the line is there already');
END;
