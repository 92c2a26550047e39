package walebook.sheet;

import java.util.List;
import java.util.stream.Stream;
import walebook.record.TestPiece;

/** What was measured beside the pull, how and by whom. */
final class PieceMeasureColumns {
  private PieceMeasureColumns() {}

  static List<Column<TestPiece>> of(PieceLookup lookup, Choices choices) {
    return Stream.of(lengths(), minutes(), how(choices), who(lookup))
        .flatMap(List::stream)
        .toList();
  }

  private static List<Column<TestPiece>> lengths() {
    return List.of(
        Column.figure(
            "released",
            "sheet.pieces.released",
            "mm",
            "sheet.pieces.released.says",
            Origin.TYPED,
            Format.TENTHS,
            piece -> piece.measure().releasedMm()),
        Column.figure(
            "edge-before",
            "sheet.pieces.edge-before",
            "mm",
            "sheet.pieces.edge-before.says",
            Origin.TYPED,
            Format.TENTHS,
            piece -> piece.measure().edgeBeforeMm()),
        Column.figure(
            "edge-sewn",
            "sheet.pieces.edge-sewn",
            "mm",
            "sheet.pieces.edge-sewn.says",
            Origin.TYPED,
            Format.TENTHS,
            piece -> piece.measure().edgeSewnMm()),
        Column.figure(
            "edge-pressed",
            "sheet.pieces.edge-pressed",
            "mm",
            "sheet.pieces.edge-pressed.says",
            Origin.TYPED,
            Format.TENTHS,
            piece -> piece.measure().edgePressedMm()),
        Column.figure(
            "edge-change",
            "sheet.pieces.edge-change",
            "%",
            "sheet.pieces.edge-change.says",
            Origin.EDGE_CHANGE,
            Format.TENTHS,
            piece -> piece.measure().edgeChangePercent()));
  }

  private static List<Column<TestPiece>> minutes() {
    return List.of(
        Column.figure(
            "minutes",
            "sheet.pieces.minutes",
            "min",
            "sheet.pieces.minutes.says",
            Origin.TYPED,
            Format.TENTHS,
            piece -> piece.measure().sewingMinutes()));
  }

  private static List<Column<TestPiece>> how(Choices choices) {
    return List.of(
        Column.words(
            "fold",
            "sheet.pieces.fold",
            "sheet.pieces.fold.says",
            Origin.TYPED,
            piece -> choices.fold(piece.measure().how().fold())),
        Column.words(
            "pull",
            "sheet.pieces.pull",
            "sheet.pieces.pull.says",
            Origin.TYPED,
            piece -> choices.pull(piece.measure().how().pull())),
        Column.figure(
            "load",
            "sheet.pieces.load",
            "g",
            "sheet.pieces.load.says",
            Origin.TYPED,
            Format.TENTHS,
            piece -> piece.measure().how().loadG()),
        Column.figure(
            "hold",
            "sheet.pieces.hold",
            "s",
            "sheet.pieces.hold.says",
            Origin.TYPED,
            Format.TYPED,
            piece -> piece.measure().how().holdS()),
        Column.figure(
            "rest",
            "sheet.pieces.rest",
            "s",
            "sheet.pieces.rest.says",
            Origin.TYPED,
            Format.TYPED,
            piece -> piece.measure().how().restS()));
  }

  private static List<Column<TestPiece>> who(PieceLookup lookup) {
    return List.of(
        Column.text(
            "measured-by",
            "sheet.pieces.measured-by",
            "sheet.pieces.measured-by.says",
            Origin.PERSON,
            Format.TEXT,
            piece -> lookup.name(piece.measure().measuredBy())),
        Column.of(
            "measured-on",
            "sheet.pieces.measured-on",
            "",
            "sheet.pieces.measured-on.says",
            Origin.TYPED,
            Format.DAY,
            piece -> Value.of(piece.measure().measuredOn())));
  }
}
