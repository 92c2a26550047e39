package walebook.book;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiConsumer;
import walebook.record.DoneLine;
import walebook.record.ResultLine;

/** Test pieces cut down to what comparisons need. */
public interface Results {
  /** Lines that fit, in the order they were sewn. */
  List<ResultLine> list(ResultFilter filter);

  /**
   * Tells every piece that fits, one after the other in no order, and keeps none of them: for
   * classes of any size.
   */
  void each(ResultFilter filter, BiConsumer<ResultLine, DoneLine> to);

  /** Whose plan and lesson the pieces belong to. */
  List<DoneLine> done(ResultFilter filter);

  /** Plain names of the stitches that the pieces which fit were sewn with, each once. */
  Set<String> stitches(ResultFilter filter);

  /** Those of the pieces that fit which are the control that everybody sewed. */
  Set<UUID> controls(ResultFilter filter);
}
