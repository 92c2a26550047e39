-- What the things of a kit cost when they were last bought. Names, keys and stamps as in the first
-- script.

-- Of a cloth of the room, or of anything else by the name that a pack has for it; in whatever money
-- the class pays with.
CREATE TABLE kit_price (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  cloth_id TEXT REFERENCES cloth (id),
  what TEXT NOT NULL DEFAULT '',
  is_metre INTEGER NOT NULL CHECK (is_metre IN (0, 1)),
  price REAL NOT NULL CHECK (price >= 0),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0),
  CHECK ((cloth_id IS NULL) = (length(trim(what)) > 0)),
  CHECK (cloth_id IS NULL OR is_metre = 1)
) STRICT;

CREATE UNIQUE INDEX kit_price_cloth ON kit_price (cloth_id) WHERE cloth_id IS NOT NULL;
CREATE UNIQUE INDEX kit_price_what ON kit_price (what, is_metre) WHERE cloth_id IS NULL;
