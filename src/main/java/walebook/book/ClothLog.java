package walebook.book;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.By;
import walebook.record.ClothReading;
import walebook.record.ClothWash;
import walebook.record.StretchReading;

/** What was measured on cloths. */
public interface ClothLog {
  void add(ClothReading reading);

  void add(ClothWash wash);

  @Nullable ClothReading find(UUID readingId);

  /**
   * Saves a changed reading and writes what it was into the history; its stamp must be the next
   * after the saved one's.
   *
   * @throws StaleRow when somebody else saved it meanwhile
   */
  void update(ClothReading reading, By by, String act, UUID stepId);

  /** Readings of one cloth, oldest first. */
  List<ClothReading> readingsOf(UUID clothId);

  /** What comparisons need of the readings of some cloths; by cloth, then oldest first. */
  List<StretchReading> stretchesOf(Set<UUID> clothIds);

  /** Every reading in the book, by cloth, then oldest first. */
  List<ClothReading> allReadings();

  /** Washes of one cloth, oldest first. */
  List<ClothWash> washesOf(UUID clothId);
}
