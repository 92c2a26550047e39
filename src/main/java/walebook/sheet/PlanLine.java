package walebook.sheet;

import walebook.record.PlannedPiece;

/** One planned piece of a lesson and whether it was logged. */
record PlanLine(String lesson, PlannedPiece planned, boolean logged) {}
