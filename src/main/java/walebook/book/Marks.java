package walebook.book;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.By;
import walebook.record.Mark;
import walebook.record.MarkedValue;
import walebook.record.ValueMark;

/** What the tutor made of odd values; each change is written into the history with it. */
public interface Marks {
  /** Every mark of the book, the newest first. */
  List<ValueMark> all();

  /** The mark that stands on a value, or null. */
  @Nullable ValueMark find(MarkedValue value, UUID targetId);

  /** Pieces or readings of which this value is set aside. */
  Set<UUID> setAside(MarkedValue value);

  /** Puts a mark in the place of the one that stood there. */
  ValueMark put(MarkedValue value, UUID targetId, Mark mark, String reason, By by, UUID stepId);
}
