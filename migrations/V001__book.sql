-- The first shape of a book: one classroom's people, machines, cloths, lessons and test pieces.
-- Names tell the type: _on a date as ISO text, _at milliseconds since 1970 (UTC), _mm millimetres,
-- is_/has_/needs_/does_ a yes or no as 1 or 0. Keys are UUIDv7 text, so that books can be gathered.
-- Every table: when a row was made, when last changed, and its version for lost-update checks.

PRAGMA application_id = 1463897157; -- 'WALE'

CREATE TABLE book_info (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  name TEXT NOT NULL CHECK (length(trim(name)) > 0),
  is_invented INTEGER NOT NULL DEFAULT 0 CHECK (is_invented IN (0, 1)),
  length_unit TEXT NOT NULL DEFAULT 'mm' CHECK (length_unit IN ('mm', 'cm', 'in')),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE TABLE tutor (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  name TEXT NOT NULL CHECK (length(trim(name)) > 0),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE TABLE student (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  name TEXT NOT NULL CHECK (length(trim(name)) > 0),
  alias TEXT NOT NULL CHECK (length(trim(alias)) > 0),
  tier TEXT NOT NULL DEFAULT 'standard' CHECK (tier IN ('core', 'standard', 'own')),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE TABLE term (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  name TEXT NOT NULL CHECK (length(trim(name)) > 0),
  starts_on TEXT NOT NULL CHECK (starts_on LIKE '____-__-__'),
  ends_on TEXT NOT NULL CHECK (ends_on LIKE '____-__-__'),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  CHECK (starts_on <= ends_on)
) STRICT;

CREATE TABLE school_class (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  term_id TEXT NOT NULL REFERENCES term (id),
  tutor_id TEXT REFERENCES tutor (id),
  name TEXT NOT NULL CHECK (length(trim(name)) > 0),
  meets TEXT NOT NULL DEFAULT '',
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE INDEX school_class_term ON school_class (term_id);

CREATE TABLE class_student (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  class_id TEXT NOT NULL REFERENCES school_class (id),
  student_id TEXT NOT NULL REFERENCES student (id),
  joined_on TEXT NOT NULL CHECK (joined_on LIKE '____-__-__'),
  left_on TEXT CHECK (left_on LIKE '____-__-__'),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  UNIQUE (class_id, student_id)
) STRICT;

CREATE INDEX class_student_student ON class_student (student_id);

-- A machine in the room. Dial numbers mean nothing from one machine to the next, so what lower,
-- normal and higher mean is kept per machine.
CREATE TABLE machine (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  number INTEGER NOT NULL UNIQUE CHECK (number BETWEEN 1 AND 999),
  name TEXT NOT NULL DEFAULT '',
  kind TEXT NOT NULL CHECK (kind IN ('sewing', 'overlocker', 'coverstitch')),
  needle_to_knife_mm REAL CHECK (needle_to_knife_mm > 0),
  pressure_lower TEXT NOT NULL DEFAULT '',
  pressure_normal TEXT NOT NULL DEFAULT '',
  pressure_higher TEXT NOT NULL DEFAULT '',
  tension_lower TEXT NOT NULL DEFAULT '',
  tension_normal TEXT NOT NULL DEFAULT '',
  tension_higher TEXT NOT NULL DEFAULT '',
  feed_least REAL CHECK (feed_least > 0),
  feed_most REAL CHECK (feed_most > 0),
  is_retired INTEGER NOT NULL DEFAULT 0 CHECK (is_retired IN (0, 1)),
  remark TEXT NOT NULL DEFAULT '',
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  CHECK (feed_least IS NULL OR feed_most IS NULL OR feed_least <= feed_most)
) STRICT;

-- What a machine can sew, by ISO 4915 number.
CREATE TABLE machine_stitch (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  machine_id TEXT NOT NULL REFERENCES machine (id),
  stitch_type TEXT NOT NULL CHECK (length(stitch_type) > 0),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  UNIQUE (machine_id, stitch_type)
) STRICT;

-- The machine's card: what a dial setting sews, measured once a term.
CREATE TABLE machine_dial (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  machine_id TEXT NOT NULL REFERENCES machine (id),
  term_id TEXT REFERENCES term (id),
  what TEXT NOT NULL CHECK (what IN ('length', 'width')),
  dial REAL NOT NULL CHECK (dial >= 0),
  sewn_mm REAL NOT NULL CHECK (sewn_mm >= 0),
  measured_on TEXT NOT NULL CHECK (measured_on LIKE '____-__-__'),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE INDEX machine_dial_machine ON machine_dial (machine_id);

CREATE TABLE cloth (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  name TEXT NOT NULL CHECK (length(trim(name)) > 0),
  kind TEXT NOT NULL DEFAULT '',
  fibre TEXT NOT NULL DEFAULT '',
  elastane_percent REAL CHECK (elastane_percent BETWEEN 0 AND 100),
  mass_gm2 REAL CHECK (mass_gm2 > 0),
  width_mm REAL CHECK (width_mm > 0),
  thickness_mm REAL CHECK (thickness_mm > 0),
  does_fray INTEGER CHECK (does_fray IN (0, 1)),
  does_shed INTEGER CHECK (does_shed IN (0, 1)),
  does_ladder INTEGER CHECK (does_ladder IN (0, 1)),
  does_curl INTEGER CHECK (does_curl IN (0, 1)),
  needs_finishing INTEGER CHECK (needs_finishing IN (0, 1)),
  is_retired INTEGER NOT NULL DEFAULT 0 CHECK (is_retired IN (0, 1)),
  remark TEXT NOT NULL DEFAULT '',
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

-- The pack as it was taught, text and all: a later edit of the folder never rewrites it.
CREATE TABLE pack (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  name TEXT NOT NULL CHECK (length(trim(name)) > 0),
  version TEXT NOT NULL,
  title TEXT NOT NULL CHECK (length(trim(title)) > 0),
  content_hash TEXT NOT NULL UNIQUE CHECK (length(content_hash) = 64),
  pack_yaml TEXT NOT NULL,
  lesson_md TEXT NOT NULL,
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE TABLE pack_picture (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  pack_id TEXT NOT NULL REFERENCES pack (id),
  file_name TEXT NOT NULL,
  content BLOB NOT NULL,
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  UNIQUE (pack_id, file_name)
) STRICT;

CREATE TABLE lesson (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  class_id TEXT NOT NULL REFERENCES school_class (id),
  pack_id TEXT NOT NULL REFERENCES pack (id),
  title TEXT NOT NULL CHECK (length(trim(title)) > 0),
  taught_on TEXT NOT NULL CHECK (taught_on LIKE '____-__-__'),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE INDEX lesson_class ON lesson (class_id, taught_on);

-- A reading of a cloth's stretch along one grain; said with it: all that the number depends on.
CREATE TABLE cloth_reading (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  cloth_id TEXT NOT NULL REFERENCES cloth (id),
  class_id TEXT REFERENCES school_class (id),
  lesson_id TEXT REFERENCES lesson (id),
  measured_by TEXT REFERENCES student (id),
  grain TEXT NOT NULL CHECK (grain IN ('wale', 'course', 'bias')),
  gauge_mm REAL NOT NULL CHECK (gauge_mm > 0),
  stretched_mm REAL NOT NULL CHECK (stretched_mm > 0),
  released_mm REAL CHECK (released_mm > 0),
  rest_s REAL CHECK (rest_s >= 0),
  fold TEXT NOT NULL CHECK (fold IN ('folded', 'single')),
  cut_edge TEXT NOT NULL DEFAULT 'inside' CHECK (cut_edge IN ('inside', 'cut', 'selvedge')),
  pull TEXT NOT NULL CHECK (pull IN ('comfortable', 'firm', 'load')),
  load_g REAL CHECK (load_g > 0),
  hold_s REAL CHECK (hold_s >= 0),
  cycle INTEGER NOT NULL DEFAULT 1 CHECK (cycle BETWEEN 1 AND 1000),
  measured_on TEXT NOT NULL CHECK (measured_on LIKE '____-__-__'),
  remark TEXT NOT NULL DEFAULT '',
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  CHECK (pull <> 'load' OR load_g IS NOT NULL)
) STRICT;

CREATE INDEX cloth_reading_cloth ON cloth_reading (cloth_id, grain);

CREATE TABLE cloth_wash (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  cloth_id TEXT NOT NULL REFERENCES cloth (id),
  grain TEXT NOT NULL CHECK (grain IN ('wale', 'course')),
  before_mm REAL NOT NULL CHECK (before_mm > 0),
  after_mm REAL NOT NULL CHECK (after_mm > 0),
  wash TEXT NOT NULL DEFAULT '',
  washed_on TEXT NOT NULL CHECK (washed_on LIKE '____-__-__'),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE INDEX cloth_wash_cloth ON cloth_wash (cloth_id);

-- What a student is asked to sew. The code stands on the label before the piece exists.
CREATE TABLE planned_piece (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  lesson_id TEXT NOT NULL REFERENCES lesson (id),
  student_id TEXT NOT NULL REFERENCES student (id),
  code TEXT NOT NULL UNIQUE CHECK (length(code) = 6),
  place INTEGER NOT NULL CHECK (place > 0),
  is_control INTEGER NOT NULL DEFAULT 0 CHECK (is_control IN (0, 1)),
  is_dropped INTEGER NOT NULL DEFAULT 0 CHECK (is_dropped IN (0, 1)),
  cell TEXT NOT NULL,
  cloth_id TEXT REFERENCES cloth (id),
  grain TEXT NOT NULL CHECK (grain IN ('wale', 'course', 'bias')),
  layers INTEGER NOT NULL CHECK (layers BETWEEN 1 AND 6),
  method TEXT NOT NULL CHECK (method IN ('seam', 'hem', 'band', 'edge')),
  machine_kind TEXT NOT NULL CHECK (machine_kind IN ('sewing', 'overlocker', 'coverstitch')),
  stitch_type TEXT NOT NULL CHECK (length(stitch_type) > 0),
  dial_width REAL CHECK (dial_width >= 0),
  dial_length REAL CHECK (dial_length >= 0),
  needle_point TEXT CHECK (needle_point IN ('universal', 'jersey', 'stretch', 'sharp', 'twin-stretch')),
  needle_nm INTEGER CHECK (needle_nm BETWEEN 50 AND 200),
  hem_method TEXT NOT NULL DEFAULT '',
  stabiliser TEXT NOT NULL DEFAULT '',
  need_percent REAL CHECK (need_percent >= 0),
  readings_asked INTEGER NOT NULL DEFAULT 1 CHECK (readings_asked BETWEEN 1 AND 5),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE INDEX planned_piece_lesson ON planned_piece (lesson_id, student_id, place);

CREATE TABLE test_piece (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  code TEXT NOT NULL UNIQUE CHECK (length(code) = 6),
  class_id TEXT NOT NULL REFERENCES school_class (id),
  student_id TEXT NOT NULL REFERENCES student (id),
  lesson_id TEXT REFERENCES lesson (id),
  planned_id TEXT REFERENCES planned_piece (id),
  sewn_on TEXT NOT NULL CHECK (sewn_on LIKE '____-__-__'),
  -- the cloth
  cloth_id TEXT NOT NULL REFERENCES cloth (id),
  grain TEXT NOT NULL CHECK (grain IN ('wale', 'course', 'bias')),
  layers INTEGER NOT NULL CHECK (layers BETWEEN 1 AND 6),
  -- the machine; dial values are what was set, sewn ones what the machine's card makes of them
  method TEXT NOT NULL CHECK (method IN ('seam', 'hem', 'band', 'edge')),
  machine_id TEXT REFERENCES machine (id),
  machine_kind TEXT NOT NULL CHECK (machine_kind IN ('sewing', 'overlocker', 'coverstitch')),
  stitch_type TEXT NOT NULL CHECK (length(stitch_type) > 0),
  stitch_name TEXT NOT NULL,
  dial_width REAL CHECK (dial_width >= 0),
  dial_length REAL CHECK (dial_length >= 0),
  sewn_width_mm REAL CHECK (sewn_width_mm >= 0),
  sewn_length_mm REAL CHECK (sewn_length_mm >= 0),
  needle_point TEXT CHECK (needle_point IN ('universal', 'jersey', 'stretch', 'sharp', 'twin-stretch')),
  needle_nm INTEGER CHECK (needle_nm BETWEEN 50 AND 200),
  thread TEXT NOT NULL DEFAULT '',
  pressure TEXT CHECK (pressure IN ('lower', 'normal', 'higher')),
  pressure_dial TEXT NOT NULL DEFAULT '',
  tension TEXT CHECK (tension IN ('lower', 'normal', 'higher')),
  tension_dial TEXT NOT NULL DEFAULT '',
  differential_feed REAL CHECK (differential_feed > 0),
  stabiliser TEXT NOT NULL DEFAULT '',
  hem_method TEXT NOT NULL DEFAULT '',
  -- the measure
  gauge_mm REAL CHECK (gauge_mm > 0),
  edge_before_mm REAL CHECK (edge_before_mm > 0),
  edge_sewn_mm REAL CHECK (edge_sewn_mm > 0),
  edge_pressed_mm REAL CHECK (edge_pressed_mm > 0),
  seam_end TEXT CHECK (seam_end IN ('gave', 'held')),
  end_mm REAL CHECK (end_mm > 0),
  broke TEXT CHECK (broke IN ('needle-thread', 'under-thread', 'cloth', 'grin')),
  released_mm REAL CHECK (released_mm > 0),
  rest_s REAL CHECK (rest_s >= 0),
  need_percent REAL CHECK (need_percent >= 0),
  fold TEXT CHECK (fold IN ('folded', 'single')),
  pull TEXT CHECK (pull IN ('comfortable', 'firm', 'load')),
  load_g REAL CHECK (load_g > 0),
  hold_s REAL CHECK (hold_s >= 0),
  measured_by TEXT REFERENCES student (id),
  measured_on TEXT CHECK (measured_on LIKE '____-__-__'),
  -- what was seen
  grade INTEGER CHECK (grade BETWEEN 1 AND 5),
  outcome TEXT CHECK (outcome IN ('keep', 'change', 'spoiled')),
  remark TEXT NOT NULL DEFAULT '',
  -- the chain of attempts
  parent_id TEXT REFERENCES test_piece (id),
  changed_factor TEXT NOT NULL DEFAULT '',
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  CHECK ((seam_end IS NULL) = (end_mm IS NULL)),
  CHECK (end_mm IS NULL OR gauge_mm IS NOT NULL),
  CHECK (parent_id IS NULL OR parent_id <> id)
) STRICT;

CREATE INDEX test_piece_class ON test_piece (class_id, lesson_id, student_id);
CREATE INDEX test_piece_student ON test_piece (student_id, sewn_on);
CREATE INDEX test_piece_cloth ON test_piece (cloth_id, grain);
CREATE INDEX test_piece_parent ON test_piece (parent_id) WHERE parent_id IS NOT NULL;
CREATE UNIQUE INDEX test_piece_planned ON test_piece (planned_id) WHERE planned_id IS NOT NULL;

-- Each pull where more than one was asked for; the piece itself carries the one that counts.
CREATE TABLE piece_pull (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  piece_id TEXT NOT NULL REFERENCES test_piece (id),
  nth INTEGER NOT NULL CHECK (nth BETWEEN 1 AND 9),
  seam_end TEXT NOT NULL CHECK (seam_end IN ('gave', 'held')),
  end_mm REAL NOT NULL CHECK (end_mm > 0),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  UNIQUE (piece_id, nth)
) STRICT;

CREATE TABLE fault_seen (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  piece_id TEXT NOT NULL REFERENCES test_piece (id),
  fault TEXT NOT NULL CHECK (length(fault) > 0),
  place TEXT NOT NULL CHECK (place IN ('start', 'crossing', 'curve', 'end', 'all-along')),
  severity INTEGER NOT NULL CHECK (severity BETWEEN 0 AND 3),
  seen_when TEXT NOT NULL CHECK (seen_when IN ('sewn', 'pressed', 'stretched', 'washed')),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

CREATE INDEX fault_seen_piece ON fault_seen (piece_id);

-- Pictures stand in a table of their own, thumbnails beside the listing.
CREATE TABLE photo (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  piece_id TEXT REFERENCES test_piece (id),
  cloth_id TEXT REFERENCES cloth (id),
  caption TEXT NOT NULL DEFAULT '',
  media_type TEXT NOT NULL CHECK (media_type IN ('image/jpeg', 'image/png')),
  width_px INTEGER NOT NULL CHECK (width_px > 0),
  height_px INTEGER NOT NULL CHECK (height_px > 0),
  thumbnail BLOB NOT NULL,
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  CHECK ((piece_id IS NULL) <> (cloth_id IS NULL))
) STRICT;

CREATE INDEX photo_piece ON photo (piece_id) WHERE piece_id IS NOT NULL;
CREATE INDEX photo_cloth ON photo (cloth_id) WHERE cloth_id IS NOT NULL;

CREATE TABLE photo_image (
  id TEXT NOT NULL PRIMARY KEY REFERENCES photo (id) CHECK (length(id) = 36),
  image BLOB NOT NULL,
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;

-- Longer words about one thing: a piece, a cloth, a lesson or a student.
CREATE TABLE note (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  piece_id TEXT REFERENCES test_piece (id),
  cloth_id TEXT REFERENCES cloth (id),
  lesson_id TEXT REFERENCES lesson (id),
  student_id TEXT REFERENCES student (id),
  author TEXT NOT NULL DEFAULT '',
  body TEXT NOT NULL CHECK (length(trim(body)) > 0),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  CHECK ((piece_id IS NOT NULL) + (cloth_id IS NOT NULL) + (lesson_id IS NOT NULL)
         + (student_id IS NOT NULL) = 1)
) STRICT;

CREATE INDEX note_piece ON note (piece_id) WHERE piece_id IS NOT NULL;
CREATE INDEX note_cloth ON note (cloth_id) WHERE cloth_id IS NOT NULL;
CREATE INDEX note_lesson ON note (lesson_id) WHERE lesson_id IS NOT NULL;

-- What is typed and not yet saved, field by field as typed, so that nothing is lost.
CREATE TABLE draft (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  form TEXT NOT NULL CHECK (length(form) > 0),
  owner TEXT NOT NULL,
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  UNIQUE (form, owner)
) STRICT;

CREATE TABLE draft_field (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  draft_id TEXT NOT NULL REFERENCES draft (id) ON DELETE CASCADE,
  field TEXT NOT NULL CHECK (length(field) > 0),
  typed TEXT NOT NULL,
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  UNIQUE (draft_id, field)
) STRICT;
