package walebook.sheet;

import walebook.record.ReadingLine;

/** What a student was asked to measure for a lesson, and what is measured of it. */
record ReadingPlanLine(String lesson, ReadingLine asked) {}
