package walebook.book;

import java.util.List;
import java.util.UUID;
import walebook.record.ClothReading;
import walebook.record.ClothWash;

/** What was measured on cloths. */
public interface ClothLog {
  void add(ClothReading reading);

  void add(ClothWash wash);

  /** Readings of one cloth, oldest first. */
  List<ClothReading> readingsOf(UUID clothId);

  /** Every reading in the book, by cloth, then oldest first. */
  List<ClothReading> allReadings();

  List<ClothWash> washesOf(UUID clothId);
}
