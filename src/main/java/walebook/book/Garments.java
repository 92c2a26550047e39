package walebook.book;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.GarmentSheet;

/**
 * Garment sheets. A person's own girths are private: they are kept apart, only where they are
 * wanted, and nothing that leaves the book asks for them.
 */
public interface Garments {
  /** All of them, the one changed last first. */
  List<GarmentSheet> all();

  /** One student's, or with null those that belong to nobody; the one changed last first. */
  List<GarmentSheet> of(@Nullable UUID studentId);

  @Nullable GarmentSheet find(UUID id);

  /** Saves a new one with its girths and openings. */
  void add(GarmentSheet sheet);

  /**
   * Saves a changed one; its stamp must be the next after the saved one's. Private girths stay.
   *
   * @throws StaleRow when somebody else saved it meanwhile
   */
  void update(GarmentSheet sheet);

  /** The body's girths in mm by key; empty when they were not to be kept. */
  Map<String, Double> bodyOf(UUID sheetId);

  /** Keeps the body's girths in the place of those kept before; an empty map forgets them. */
  void keepBody(UUID sheetId, Map<String, Double> girthsMm);
}
