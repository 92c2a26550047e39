package walebook.book;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import walebook.record.DoneLine;
import walebook.record.ResultLine;

/** Test pieces cut down to what comparisons need. */
public interface Results {
  /** Lines that fit, in the order they were sewn. */
  List<ResultLine> list(ResultFilter filter);

  /** Whose plan and lesson the pieces belong to. */
  List<DoneLine> done(ResultFilter filter);

  /** Those of the pieces that fit which are the control that everybody sewed. */
  Set<UUID> controls(ResultFilter filter);
}
