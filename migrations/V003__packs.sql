-- The book's shelf: packs from outside the program that are ready to be taken up. The packs
-- themselves stand in pack, which also keeps those that were taught and left the shelf since.
-- Names, keys and stamps as in the first script.

CREATE TABLE shelved_pack (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  pack_id TEXT NOT NULL UNIQUE REFERENCES pack (id),
  created_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  row_version INTEGER NOT NULL DEFAULT 1 CHECK (row_version > 0)
) STRICT;
