package walebook.act.piece;

import java.util.EnumMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.Parent;
import walebook.record.TestPiece;

/**
 * A piece as it is being typed: whose it is, and each field's text as it stands.
 *
 * @param pieceId the key that the piece will have, so that a save tried twice saves once
 * @param plannedId the planned piece that it carries out
 * @param code given by the plan's label; null when one is to be drawn
 * @param parentId the piece that it tries again with one change
 */
public record PieceEntry(
    UUID pieceId,
    UUID classId,
    UUID studentId,
    @Nullable UUID lessonId,
    @Nullable UUID plannedId,
    @Nullable String code,
    @Nullable UUID parentId,
    Map<PieceField, String> typed) {
  public PieceEntry {
    Map<PieceField, String> copy = new EnumMap<>(PieceField.class);
    copy.putAll(typed);
    typed = java.util.Collections.unmodifiableMap(copy);
  }

  /** The entry of a saved piece, with nothing typed yet. */
  public static PieceEntry of(TestPiece piece) {
    Parent parent = piece.parent();
    return new PieceEntry(
        piece.id(),
        piece.whose().classId(),
        piece.whose().studentId(),
        piece.whose().lessonId(),
        piece.whose().plannedId(),
        piece.code(),
        parent == null ? null : parent.pieceId(),
        Map.of());
  }

  /** What stands in a field; empty when nothing does. */
  public String at(PieceField field) {
    return typed.getOrDefault(field, "").strip();
  }

  /** The same texts for a piece with another key. */
  public PieceEntry as(UUID otherPieceId) {
    return new PieceEntry(
        otherPieceId, classId, studentId, lessonId, plannedId, code, parentId, typed);
  }

  /** The same entry with one field typed anew. */
  public PieceEntry with(PieceField field, String text) {
    Map<PieceField, String> next = new EnumMap<>(PieceField.class);
    next.putAll(typed);
    next.put(field, text);
    return with(next);
  }

  /** The same entry with all its fields typed anew. */
  public PieceEntry with(Map<PieceField, String> all) {
    return new PieceEntry(pieceId, classId, studentId, lessonId, plannedId, code, parentId, all);
  }
}
