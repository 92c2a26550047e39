-- What a student is asked to measure, as planned_piece says what to sew. Names, keys and stamps as in
-- the first script.

-- One cloth along one grain, measured so many times; the slot is the plan's name for the cloth.
CREATE TABLE planned_reading (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  lesson_id TEXT NOT NULL REFERENCES lesson (id),
  student_id TEXT NOT NULL REFERENCES student (id),
  place INTEGER NOT NULL CHECK (place > 0),
  is_control INTEGER NOT NULL DEFAULT 0 CHECK (is_control IN (0, 1)),
  is_dropped INTEGER NOT NULL DEFAULT 0 CHECK (is_dropped IN (0, 1)),
  slot TEXT NOT NULL CHECK (length(slot) > 0),
  cloth_id TEXT REFERENCES cloth (id),
  grain TEXT NOT NULL CHECK (grain IN ('wale', 'course', 'bias')),
  repeats INTEGER NOT NULL CHECK (repeats BETWEEN 1 AND 10),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE INDEX planned_reading_lesson ON planned_reading (lesson_id, student_id, place);
CREATE INDEX planned_reading_cloth ON planned_reading (cloth_id);
