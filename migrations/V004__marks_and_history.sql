-- What the tutor made of odd readings, and the history of changes: nothing typed is ever lost.
-- Names, keys and stamps as in the first script.

-- A mark on one value: of a test piece, or of a reading of a cloth. The last one stands; those
-- before are in the history.
CREATE TABLE value_mark (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  piece_id TEXT REFERENCES test_piece (id),
  reading_id TEXT REFERENCES cloth_reading (id),
  marked_value TEXT NOT NULL CHECK (marked_value IN ('seam-stretch', 'edge-change', 'grade', 'cloth-stretch')),
  mark TEXT NOT NULL CHECK (mark IN ('kept', 'mistyped', 'set-aside')),
  reason TEXT NOT NULL DEFAULT '',
  made_by TEXT NOT NULL DEFAULT '',
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  CHECK ((piece_id IS NULL) <> (reading_id IS NULL)),
  CHECK ((reading_id IS NOT NULL) = (marked_value = 'cloth-stretch')),
  CHECK (mark <> 'set-aside' OR length(trim(reason)) > 0)
) STRICT;

CREATE UNIQUE INDEX value_mark_piece ON value_mark (piece_id, marked_value)
  WHERE piece_id IS NOT NULL;
CREATE UNIQUE INDEX value_mark_reading ON value_mark (reading_id) WHERE reading_id IS NOT NULL;

-- Every change of a row that was there: who, when, what it was and what it is. Changes made in one
-- go share a step and are undone together. Before is empty for a new row, after for one taken away.
CREATE TABLE change_log (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  step_id TEXT NOT NULL CHECK (length(step_id) = 36),
  done_at INTEGER NOT NULL,
  who TEXT NOT NULL DEFAULT '',
  student_id TEXT REFERENCES student (id),
  tutor_id TEXT REFERENCES tutor (id),
  act TEXT NOT NULL CHECK (length(act) > 0),
  entity TEXT NOT NULL CHECK (length(entity) > 0),
  entity_id TEXT NOT NULL CHECK (length(entity_id) = 36),
  before_json TEXT CHECK (before_json IS NULL OR json_valid(before_json)),
  after_json TEXT CHECK (after_json IS NULL OR json_valid(after_json)),
  is_undone INTEGER NOT NULL DEFAULT 0 CHECK (is_undone IN (0, 1)),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  CHECK (before_json IS NOT NULL OR after_json IS NOT NULL)
) STRICT;

CREATE INDEX change_log_entity ON change_log (entity, entity_id, done_at);
CREATE INDEX change_log_step ON change_log (step_id);
CREATE INDEX change_log_done ON change_log (done_at);
