package walebook.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.record.Needle;
import walebook.record.TestPiece;

/** How the machine was set. */
final class PieceSettingColumns {
  private PieceSettingColumns() {}

  static List<Column<TestPiece>> of(PieceLookup lookup, Choices choices) {
    return Stream.of(
            machine(lookup, choices),
            stitch(),
            sizes(),
            needle(choices),
            steps(choices),
            underFoot())
        .flatMap(List::stream)
        .toList();
  }

  private static List<Column<TestPiece>> machine(PieceLookup lookup, Choices choices) {
    return List.of(
        Column.words(
            "method",
            "sheet.pieces.method",
            "sheet.pieces.method.says",
            Origin.TYPED,
            piece -> choices.method(piece.setting().method())),
        Column.text(
            "machine",
            "sheet.pieces.machine",
            "sheet.pieces.machine.says",
            Origin.ROOM,
            Format.TEXT,
            piece -> lookup.name(piece.setting().machineId())),
        Column.text(
            "machine-kind",
            "sheet.pieces.machine-kind",
            "sheet.pieces.machine-kind.says",
            Origin.TYPED,
            Format.TEXT,
            piece -> choices.machine(piece.setting().machineKind())));
  }

  private static List<Column<TestPiece>> stitch() {
    return List.of(
        Column.words(
            "stitch-type",
            "sheet.pieces.stitch-type",
            "sheet.pieces.stitch-type.says",
            Origin.TYPED,
            piece -> piece.setting().stitchType()),
        Column.text(
            "stitch-name",
            "sheet.pieces.stitch-name",
            "sheet.pieces.stitch-name.says",
            Origin.TYPED,
            Format.TEXT,
            piece -> piece.setting().stitchName()));
  }

  private static List<Column<TestPiece>> sizes() {
    return List.of(
        Column.figure(
            "dial-width",
            "sheet.pieces.dial-width",
            "",
            "sheet.pieces.dial-width.says",
            Origin.TYPED,
            Format.TENTHS,
            piece -> piece.setting().dialWidth()),
        Column.figure(
            "dial-length",
            "sheet.pieces.dial-length",
            "",
            "sheet.pieces.dial-length.says",
            Origin.TYPED,
            Format.TENTHS,
            piece -> piece.setting().dialLength()),
        Column.figure(
            "sewn-width",
            "sheet.pieces.sewn-width",
            "mm",
            "sheet.pieces.sewn-width.says",
            Origin.DIAL_CARD,
            Format.HUNDREDTHS,
            piece -> piece.setting().sewnWidthMm()),
        Column.figure(
            "sewn-length",
            "sheet.pieces.sewn-length",
            "mm",
            "sheet.pieces.sewn-length.says",
            Origin.DIAL_CARD,
            Format.HUNDREDTHS,
            piece -> piece.setting().sewnLengthMm()));
  }

  private static List<Column<TestPiece>> needle(Choices choices) {
    return List.of(
        Column.words(
            "needle-point",
            "sheet.pieces.needle-point",
            "sheet.pieces.needle-point.says",
            Origin.TYPED,
            piece -> point(choices, piece.setting().needle())),
        Column.whole(
            "needle-size",
            "sheet.pieces.needle-size",
            "sheet.pieces.needle-size.says",
            Origin.TYPED,
            piece -> size(piece.setting().needle())),
        Column.text(
            "thread",
            "sheet.pieces.thread",
            "sheet.pieces.thread.says",
            Origin.TYPED,
            Format.TEXT,
            piece -> piece.setting().thread()));
  }

  private static List<Column<TestPiece>> steps(Choices choices) {
    return List.of(
        Column.words(
            "pressure",
            "sheet.pieces.pressure",
            "sheet.pieces.pressure.says",
            Origin.TYPED,
            piece -> choices.step(piece.setting().pressure())),
        Column.words(
            "pressure-dial",
            "sheet.pieces.pressure-dial",
            "sheet.pieces.pressure-dial.says",
            Origin.TYPED,
            piece -> piece.setting().pressureDial()),
        Column.words(
            "tension",
            "sheet.pieces.tension",
            "sheet.pieces.tension.says",
            Origin.TYPED,
            piece -> choices.step(piece.setting().tension())),
        Column.words(
            "tension-dial",
            "sheet.pieces.tension-dial",
            "sheet.pieces.tension-dial.says",
            Origin.TYPED,
            piece -> piece.setting().tensionDial()));
  }

  private static List<Column<TestPiece>> underFoot() {
    return List.of(
        Column.figure(
            "differential-feed",
            "sheet.pieces.differential-feed",
            "",
            "sheet.pieces.differential-feed.says",
            Origin.TYPED,
            Format.HUNDREDTHS,
            piece -> piece.setting().differentialFeed()),
        Column.text(
            "stabiliser",
            "sheet.pieces.stabiliser",
            "sheet.pieces.stabiliser.says",
            Origin.TYPED,
            Format.TEXT,
            piece -> piece.setting().stabiliser()),
        Column.text(
            "hem-method",
            "sheet.pieces.hem-method",
            "sheet.pieces.hem-method.says",
            Origin.TYPED,
            Format.TEXT,
            piece -> piece.setting().hemMethod()));
  }

  private static @Nullable String point(Choices choices, @Nullable Needle needle) {
    return needle == null ? null : choices.point(needle.point());
  }

  private static @Nullable Number size(@Nullable Needle needle) {
    return needle == null ? null : needle.nm();
  }
}
