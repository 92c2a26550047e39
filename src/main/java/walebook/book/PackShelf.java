package walebook.book;

import java.util.List;
import java.util.UUID;
import walebook.record.TaughtPack;

/**
 * Packs from outside the program that this book carries, ready to be taken up. A pack that leaves
 * the shelf stays in the book for the lessons that were taught from it.
 */
public interface PackShelf {
  /** The packs on the shelf by name, the newest of a name first. */
  List<TaughtPack> all();

  boolean has(UUID packId);

  /** Puts a pack that the book keeps on the shelf; one that stands there already stays. */
  void put(UUID packId);

  /** Takes a pack from the shelf; true when it stood there. */
  boolean take(UUID packId);
}
