package walebook.desk.today;

import java.util.UUID;
import walebook.working.Verdict;

/** A piece logged lately. */
public record RecentPiece(UUID id, String code, String says, Verdict verdict) {}
