package walebook.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.TestPiece;

/** Whose piece it is, when and what for, and on which cloth. */
final class PieceWhoseColumns {
  /** The column that tells whose a piece is. */
  static final String STUDENT = "student";

  private PieceWhoseColumns() {}

  static List<Column<TestPiece>> of(PieceLookup lookup, Choices choices) {
    return Stream.of(whose(lookup), lesson(lookup, choices), cloth(lookup, choices))
        .flatMap(List::stream)
        .toList();
  }

  private static List<Column<TestPiece>> whose(PieceLookup lookup) {
    return List.of(
        Column.words(
            "code",
            "sheet.pieces.code",
            "sheet.pieces.code.says",
            Origin.CODE,
            piece -> PieceCode.spoken(piece.code())),
        Column.text(
            STUDENT,
            "sheet.pieces.student",
            "sheet.pieces.student.says",
            Origin.PERSON,
            Format.TEXT,
            piece -> lookup.name(piece.whose().studentId())));
  }

  private static List<Column<TestPiece>> lesson(PieceLookup lookup, Choices choices) {
    return List.of(
        Column.text(
            "lesson",
            "sheet.pieces.lesson",
            "sheet.pieces.lesson.says",
            Origin.TYPED,
            Format.TITLE,
            lookup::lesson),
        Column.whole(
            "plan-place",
            "sheet.pieces.plan-place",
            "sheet.pieces.plan-place.says",
            Origin.PLAN,
            piece -> place(lookup.plan(piece))),
        Column.words(
            "control",
            "sheet.pieces.control",
            "sheet.pieces.control.says",
            Origin.PLAN,
            piece -> choices.yes(control(lookup.plan(piece)))),
        Column.of(
            "sewn-on",
            "sheet.pieces.sewn-on",
            "",
            "sheet.pieces.sewn-on.says",
            Origin.TYPED,
            Format.DAY,
            piece -> Value.of(piece.whose().sewnOn())));
  }

  private static List<Column<TestPiece>> cloth(PieceLookup lookup, Choices choices) {
    return List.of(
        Column.text(
            "cloth",
            "sheet.pieces.cloth",
            "sheet.pieces.cloth.says",
            Origin.TYPED,
            Format.TEXT,
            piece -> lookup.name(piece.cloth().clothId())),
        Column.words(
            "grain",
            "sheet.pieces.grain",
            "sheet.pieces.grain.says",
            Origin.TYPED,
            piece -> choices.grain(piece.cloth().grain())),
        Column.whole(
            "layers",
            "sheet.pieces.layers",
            "sheet.pieces.layers.says",
            Origin.TYPED,
            piece -> piece.cloth().layers()));
  }

  private static @Nullable Number place(@Nullable PlannedPiece planned) {
    return planned == null ? null : planned.place();
  }

  private static @Nullable Boolean control(@Nullable PlannedPiece planned) {
    return planned == null ? null : planned.control();
  }
}
