-- Gathering: which version of a row was taken from which book, so that the next gathering knows
-- who changed it since; and what could not be told without asking a person.
-- Names, keys and stamps as in the first script.

-- A book that was gathered from. Copies of one book share its id and go apart afterwards: each has
-- a line of its own here.
CREATE TABLE gathered_book (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  book_id TEXT NOT NULL CHECK (length(book_id) = 36),
  name TEXT NOT NULL,
  file_name TEXT NOT NULL,
  gathered_at INTEGER NOT NULL,
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE INDEX gathered_book_book ON gathered_book (book_id);

-- The common ancestor of a row: the version there and the version here when both were last one.
-- A version here of 0 says that this book has something of the row that the other never saw.
CREATE TABLE gathered_row (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  source_id TEXT NOT NULL REFERENCES gathered_book (id),
  entity TEXT NOT NULL CHECK (length(entity) > 0),
  row_id TEXT NOT NULL CHECK (length(row_id) = 36),
  our_id TEXT NOT NULL CHECK (length(our_id) = 36),
  their_version INTEGER NOT NULL CHECK (their_version > 0),
  their_changed_at INTEGER NOT NULL,
  our_version INTEGER NOT NULL CHECK (our_version >= 0),
  our_changed_at INTEGER NOT NULL,
  -- the row came from that book
  is_born INTEGER NOT NULL CHECK (is_born IN (0, 1)),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE UNIQUE INDEX gathered_row_row ON gathered_row (source_id, entity, row_id);

-- What a person has to decide; theirs is kept whole, so that it can wait without the other book.
CREATE TABLE gather_conflict (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  source_id TEXT NOT NULL REFERENCES gathered_book (id),
  kind TEXT NOT NULL CHECK (kind IN ('both-changed', 'removed-here', 'twin', 'same-name')),
  entity TEXT NOT NULL CHECK (length(entity) > 0),
  row_id TEXT NOT NULL CHECK (length(row_id) = 36),
  our_id TEXT NOT NULL CHECK (length(our_id) = 36),
  theirs_json TEXT NOT NULL CHECK (json_valid(theirs_json)),
  their_version INTEGER NOT NULL CHECK (their_version > 0),
  their_changed_at INTEGER NOT NULL,
  choice TEXT CHECK (choice IN ('mine', 'theirs', 'settled')),
  decided_at INTEGER,
  who TEXT NOT NULL DEFAULT '',
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  CHECK ((choice IS NULL) = (decided_at IS NULL))
) STRICT;

CREATE UNIQUE INDEX gather_conflict_open ON gather_conflict (source_id, entity, row_id, kind)
  WHERE choice IS NULL;
