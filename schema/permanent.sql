-- The record itself. What stands here is never changed, never removed, and is the only thing that
-- is exchanged between bases. Everything else in a book is local to it or can be worked out again.
--
-- A form of these tables that is once in use stays readable for ever. A new form raises
-- user_version, and older books are brought up to it after a copy was made.

-- Which record the book belongs to: 16 random bytes in base 32, the same in every book of one
-- operator, and part of every digest.
CREATE TABLE record (
  only_row INTEGER PRIMARY KEY CHECK (only_row = 1),
  id       TEXT NOT NULL CHECK (length(id) = 26)
) STRICT;

CREATE TRIGGER record_is_never_changed BEFORE UPDATE ON record BEGIN
  SELECT RAISE(ABORT, 'the record of a book is never changed');
END;
CREATE TRIGGER record_is_never_removed BEFORE DELETE ON record BEGIN
  SELECT RAISE(ABORT, 'the record of a book is never removed');
END;
CREATE TRIGGER record_is_named_once BEFORE INSERT ON record
  WHEN EXISTS (SELECT 1 FROM record) BEGIN
  SELECT RAISE(ABORT, 'a book belongs to one record');
END;

-- One entry: the fields of its record line (docs/record.md) and the digest of the entry before it,
-- so that each row can be proved by itself. The key holds the digest, because a book that was
-- copied and then used in two places has two entries of one number; both are kept and shown.
-- about, knows, refers, signature and sentence stand as in the line, '-' included.
CREATE TABLE entry (
  writer    TEXT    NOT NULL CHECK (length(writer) = 26),
  number    INTEGER NOT NULL CHECK (number >= 1),
  digest    BLOB    NOT NULL CHECK (length(digest) = 32),
  previous  BLOB    NOT NULL CHECK (length(previous) = 32),
  written   INTEGER NOT NULL,  -- UTC, seconds since 1970; never used for order
  language  INTEGER NOT NULL CHECK (language >= 1),
  about     TEXT    NOT NULL,
  knows     TEXT    NOT NULL,
  refers    TEXT    NOT NULL,
  signature TEXT    NOT NULL,
  sentence  TEXT    NOT NULL CHECK (sentence <> '' AND instr(sentence, char(10)) = 0),
  PRIMARY KEY (writer, number, digest),
  CHECK (number > 1 OR previous = zeroblob(32))
) STRICT, WITHOUT ROWID;

CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry BEGIN
  SELECT RAISE(ABORT, 'an entry is never changed; a correction is a new entry');
END;
CREATE TRIGGER entry_is_never_removed BEFORE DELETE ON entry BEGIN
  SELECT RAISE(ABORT, 'an entry is never removed; a strike is a new entry');
END;
-- REPLACE removes without firing the trigger above in a program that has not switched on
-- recursive_triggers, so the second coming of a key is refused before it begins.
CREATE TRIGGER entry_stands_once BEFORE INSERT ON entry
  WHEN EXISTS (SELECT 1 FROM entry
               WHERE writer = NEW.writer AND number = NEW.number AND digest = NEW.digest) BEGIN
  SELECT RAISE(ABORT, 'the entry is there already');
END;
-- The book's own writer counts on from its newest entry. Entries of other writers are kept in
-- whatever order they arrive, also with gaps and forks.
CREATE TRIGGER own_entry_follows_the_newest BEFORE INSERT ON entry
  WHEN NEW.writer = (SELECT writer FROM own_writer ORDER BY ordinal DESC LIMIT 1)
   AND (NEW.number <> 1 + ifnull((SELECT max(number) FROM entry WHERE writer = NEW.writer), 0)
        OR NEW.previous <> ifnull((SELECT digest FROM entry WHERE writer = NEW.writer
                                   ORDER BY number DESC LIMIT 1), zeroblob(32))) BEGIN
  SELECT RAISE(ABORT, 'an own entry follows the newest own entry');
END;

-- The record lines, for reading a book without our program:
--   SELECT line FROM record_line ORDER BY writer, number;
CREATE VIEW record_line AS
  SELECT writer, number, digest,
         writer || '-' || number || ' ' || strftime('%Y-%m-%dT%H:%M:%SZ', written, 'unixepoch')
         || ' ' || language || ' ' || about || ' ' || knows || ' ' || refers || ' ' || signature
         || ' | ' || sentence AS line
  FROM entry;
