-- A criterion may look at some of the five marks only.

-- Which: the sum of 1 choice, 2 technique, 4 performance, 8 finish, 16 record and reasoning; empty
-- for all of them.
ALTER TABLE criterion ADD COLUMN marks_looked_at INTEGER
  CHECK (marks_looked_at BETWEEN 1 AND 31);
