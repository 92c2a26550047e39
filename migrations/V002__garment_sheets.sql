-- Garment sheets: what a pattern asks, the cloth, the girths and edges, and how it will be sewn.
-- Names, keys and stamps as in the first script.

CREATE TABLE garment_sheet (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  student_id TEXT REFERENCES student (id),
  name TEXT NOT NULL CHECK (length(trim(name)) > 0),
  kind TEXT NOT NULL CHECK (length(kind) > 0),
  cloth_id TEXT REFERENCES cloth (id),
  grain_round TEXT NOT NULL CHECK (grain_round IN ('wale', 'course')),
  wear TEXT NOT NULL CHECK (wear IN ('day', 'sport')),
  -- the pattern: its gauge (so long before, must reach so far) and its seam allowance
  gauge_from_mm REAL CHECK (gauge_from_mm > 0),
  gauge_to_mm REAL CHECK (gauge_to_mm > 0),
  allowance_mm REAL CHECK (allowance_mm >= 0),
  -- how it will be sewn
  machine_kind TEXT NOT NULL CHECK (machine_kind IN ('sewing', 'overlocker', 'coverstitch')),
  stitch_type TEXT NOT NULL CHECK (length(stitch_type) > 0),
  dial_width REAL CHECK (dial_width >= 0),
  dial_length REAL CHECK (dial_length >= 0),
  sewn_allowance_mm REAL CHECK (sewn_allowance_mm >= 0),
  is_trimmed INTEGER NOT NULL DEFAULT 0 CHECK (is_trimmed IN (0, 1)),
  has_sleeve INTEGER NOT NULL DEFAULT 0 CHECK (has_sleeve IN (0, 1)),
  remark TEXT NOT NULL DEFAULT '',
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  CHECK ((gauge_from_mm IS NULL) = (gauge_to_mm IS NULL)),
  CHECK (gauge_to_mm IS NULL OR gauge_to_mm >= gauge_from_mm)
) STRICT;

CREATE INDEX garment_sheet_student ON garment_sheet (student_id);
CREATE INDEX garment_sheet_cloth ON garment_sheet (cloth_id) WHERE cloth_id IS NOT NULL;

-- A girth of the finished garment. The body's own girth is never here.
CREATE TABLE garment_girth (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  sheet_id TEXT NOT NULL REFERENCES garment_sheet (id) ON DELETE CASCADE,
  girth TEXT NOT NULL CHECK (length(girth) > 0),
  finished_mm REAL NOT NULL CHECK (finished_mm > 0),
  seams INTEGER NOT NULL CHECK (seams BETWEEN 0 AND 20),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  UNIQUE (sheet_id, girth)
) STRICT;

-- An opening, on its seam line, and how its raw edge lies to that line.
CREATE TABLE garment_opening (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  sheet_id TEXT NOT NULL REFERENCES garment_sheet (id) ON DELETE CASCADE,
  edge TEXT NOT NULL CHECK (length(edge) > 0),
  over_girth TEXT NOT NULL CHECK (length(over_girth) > 0),
  opening_mm REAL CHECK (opening_mm > 0),
  seams INTEGER NOT NULL CHECK (seams BETWEEN 0 AND 20),
  shape TEXT NOT NULL CHECK (length(shape) > 0),
  -- a band on it: its length as a share of the opening, its finished width
  band_ratio REAL CHECK (band_ratio > 0),
  band_width_mm REAL CHECK (band_width_mm > 0),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  UNIQUE (sheet_id, edge),
  CHECK ((band_ratio IS NULL) = (band_width_mm IS NULL))
) STRICT;

-- What goes round an opening and must stretch with it; how far is left to test pieces unless a
-- packet states it.
CREATE TABLE garment_edge (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  opening_id TEXT NOT NULL REFERENCES garment_opening (id) ON DELETE CASCADE,
  link TEXT NOT NULL CHECK (link IN ('seam', 'hem', 'interfacing', 'band', 'elastic')),
  stated_percent REAL CHECK (stated_percent >= 0),
  -- what it is sewn with; nothing where it is as the garment's seams
  machine_kind TEXT CHECK (machine_kind IN ('sewing', 'overlocker', 'coverstitch')),
  stitch_type TEXT CHECK (length(stitch_type) > 0),
  dial_width REAL CHECK (dial_width >= 0),
  dial_length REAL CHECK (dial_length >= 0),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  UNIQUE (opening_id, link),
  CHECK ((machine_kind IS NULL) = (stitch_type IS NULL))
) STRICT;

-- A person's own girths: kept only where they want it, apart from everything that is exported.
CREATE TABLE private_girth (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  sheet_id TEXT NOT NULL REFERENCES garment_sheet (id) ON DELETE CASCADE,
  girth TEXT NOT NULL CHECK (length(girth) > 0),
  body_mm REAL NOT NULL CHECK (body_mm > 0),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  UNIQUE (sheet_id, girth)
) STRICT;
