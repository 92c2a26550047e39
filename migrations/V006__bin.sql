-- The bin, the way back and forth through the history, and who added what.
-- Names, keys and stamps as in the first script.

-- Who added a row: its key is the row's own. What it held then is the row itself until it is
-- changed, and the first change's before from then on; so a save is not written twice.
CREATE TABLE row_added (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  step_id TEXT NOT NULL CHECK (length(step_id) = 36),
  entity TEXT NOT NULL CHECK (length(entity) > 0),
  who TEXT NOT NULL DEFAULT '',
  student_id TEXT REFERENCES student (id),
  tutor_id TEXT REFERENCES tutor (id),
  is_undone INTEGER NOT NULL DEFAULT 0 CHECK (is_undone IN (0, 1)),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT, WITHOUT ROWID;

CREATE INDEX row_added_step ON row_added (step_id);

-- A step that took another back, or did it again; its key is that of its own changes' step.
CREATE TABLE step_mirror (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  of_step_id TEXT NOT NULL CHECK (length(of_step_id) = 36),
  is_redo INTEGER NOT NULL CHECK (is_redo IN (0, 1)),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE INDEX step_mirror_of ON step_mirror (of_step_id);

-- What lies in the bin: the row and all that hangs on it, moved out of its tables, so that no
-- query can meet it by mistake. The step is the one that put it there.
CREATE TABLE bin_item (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  step_id TEXT NOT NULL CHECK (length(step_id) = 36),
  entity TEXT NOT NULL CHECK (length(entity) > 0),
  entity_id TEXT NOT NULL CHECK (length(entity_id) = 36),
  rows_json TEXT NOT NULL CHECK (json_valid(rows_json)),
  who TEXT NOT NULL DEFAULT '',
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  UNIQUE (entity, entity_id)
) STRICT;

-- Pictures of rows that were taken away, which JSON cannot hold; they go back with their row.
CREATE TABLE kept_blob (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  of_table TEXT NOT NULL CHECK (length(of_table) > 0),
  row_id TEXT NOT NULL CHECK (length(row_id) = 36),
  of_column TEXT NOT NULL CHECK (length(of_column) > 0),
  content BLOB NOT NULL,
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  UNIQUE (of_table, row_id, of_column)
) STRICT;
