-- What a course asks for and how far each student has come. Names, keys and stamps as in the first
-- script.

-- What the course asks for, in the words of its papers as the tutor typed them.
CREATE TABLE criterion (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  class_id TEXT NOT NULL REFERENCES school_class (id),
  code TEXT NOT NULL CHECK (length(trim(code)) > 0),
  says TEXT NOT NULL CHECK (length(trim(says)) > 0),
  place INTEGER NOT NULL CHECK (place >= 1),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE UNIQUE INDEX criterion_code ON criterion (class_id, code);

-- A piece or a lesson that speaks for a criterion.
CREATE TABLE criterion_tag (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  criterion_id TEXT NOT NULL REFERENCES criterion (id),
  piece_id TEXT REFERENCES test_piece (id),
  lesson_id TEXT REFERENCES lesson (id),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  CHECK ((piece_id IS NULL) <> (lesson_id IS NULL))
) STRICT;

CREATE UNIQUE INDEX criterion_tag_piece ON criterion_tag (piece_id, criterion_id)
  WHERE piece_id IS NOT NULL;
CREATE UNIQUE INDEX criterion_tag_lesson ON criterion_tag (lesson_id, criterion_id)
  WHERE lesson_id IS NOT NULL;
CREATE INDEX criterion_tag_criterion ON criterion_tag (criterion_id);

-- A piece looked over by its student or by the tutor: 0 to 3 each, empty while not looked at.
CREATE TABLE piece_check (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  piece_id TEXT NOT NULL REFERENCES test_piece (id),
  checked_by TEXT NOT NULL CHECK (checked_by IN ('self', 'tutor')),
  choice_mark INTEGER CHECK (choice_mark BETWEEN 0 AND 3),
  technique_mark INTEGER CHECK (technique_mark BETWEEN 0 AND 3),
  performance_mark INTEGER CHECK (performance_mark BETWEEN 0 AND 3),
  finish_mark INTEGER CHECK (finish_mark BETWEEN 0 AND 3),
  reasoning_mark INTEGER CHECK (reasoning_mark BETWEEN 0 AND 3),
  help_given TEXT CHECK (help_given IN ('none', 'prompted', 'hands-on')),
  checked_on TEXT NOT NULL CHECK (length(checked_on) = 10),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE UNIQUE INDEX piece_check_one ON piece_check (piece_id, checked_by);

-- What the tutor said of a piece, day by day.
CREATE TABLE feedback (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  piece_id TEXT NOT NULL REFERENCES test_piece (id),
  given_on TEXT NOT NULL CHECK (length(given_on) = 10),
  says TEXT NOT NULL CHECK (length(trim(says)) > 0),
  made_by TEXT NOT NULL DEFAULT '',
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE INDEX feedback_piece ON feedback (piece_id, given_on);

-- The tutor's own comments, kept to be used again.
CREATE TABLE bank_comment (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  says TEXT NOT NULL UNIQUE CHECK (length(trim(says)) > 0),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;
