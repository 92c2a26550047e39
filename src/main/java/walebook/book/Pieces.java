package walebook.book;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.By;
import walebook.record.Grain;
import walebook.record.TestPiece;

/** The test pieces that were sewn. */
public interface Pieces {
  /** Saves a new piece with its pulls and faults; when it returns it is on the disk. */
  void add(TestPiece piece);

  /**
   * Saves a changed piece and writes what it was into the history; its stamp must be the next after
   * the saved one's.
   *
   * @throws StaleRow when somebody else saved it meanwhile
   */
  void update(TestPiece piece);

  /**
   * The same, with who did it and as what; changes of one step are undone together.
   *
   * @throws StaleRow when somebody else saved it meanwhile
   */
  void update(TestPiece piece, By by, String act, UUID stepId);

  @Nullable TestPiece find(UUID id);

  @Nullable TestPiece byCode(String code);

  /**
   * All that fit: by the day sewn, then by the student's name, then by code.
   *
   * @param students only theirs; empty for everybody's
   * @param lessons only these; empty for all and for pieces without one
   * @param aliases true to go by the student's alias instead
   */
  PieceOrder inOrder(ResultFilter filter, Set<UUID> students, Set<UUID> lessons, boolean aliases);

  /** Codes by key; those that the book has no piece of are missing. */
  Map<UUID, String> codes(Collection<UUID> ids);

  /** Pieces that fit, newest first. */
  List<TestPiece> list(PieceFilter filter);

  /**
   * Pieces on a cloth along a grain, sewn with any of these stitch types, whose seam was pulled.
   */
  List<TestPiece> pulled(UUID clothId, Grain grain, Set<String> stitchTypes);

  /** How many fit, whatever the filter's limit. */
  int count(PieceFilter filter);

  /** The piece's whole chain of attempts, from the first to the last. */
  List<TestPiece> chainOf(UUID pieceId);
}
