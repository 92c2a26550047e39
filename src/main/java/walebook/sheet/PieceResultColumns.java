package walebook.sheet;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.compare.ClothStretch;
import walebook.quantity.Show;
import walebook.record.Measure;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/** What came of the pull along the seam. */
final class PieceResultColumns {
  private PieceResultColumns() {}

  static List<Column<TestPiece>> of(PieceLookup lookup, Choices choices) {
    return Stream.of(asked(), counting(lookup, choices), stretch(lookup), pulls(choices))
        .flatMap(List::stream)
        .toList();
  }

  private static List<Column<TestPiece>> asked() {
    return List.of(
        Column.figure(
            "gauge",
            "sheet.pieces.gauge",
            "mm",
            "sheet.pieces.gauge.says",
            Origin.TYPED,
            Format.TENTHS,
            piece -> piece.measure().gaugeMm()),
        Column.figure(
            "need",
            "sheet.pieces.need",
            "%",
            "sheet.pieces.need.says",
            Origin.TYPED,
            Format.TENTHS,
            piece -> piece.measure().needPercent()));
  }

  private static List<Column<TestPiece>> counting(PieceLookup lookup, Choices choices) {
    return List.of(
        Column.words(
            "end",
            "sheet.pieces.end",
            "sheet.pieces.end.says",
            Origin.COUNTING_PULL,
            piece -> choices.end(lookup.result(piece).end())),
        Column.figure(
            "end-length",
            "sheet.pieces.end-length",
            "mm",
            "sheet.pieces.end-length.says",
            Origin.COUNTING_PULL,
            Format.TENTHS,
            piece -> end(piece.measure().counting())),
        Column.words(
            "lower-bound",
            "sheet.pieces.lower-bound",
            "sheet.pieces.lower-bound.says",
            Origin.COUNTING_PULL,
            piece -> choices.yes(bound(piece.measure().counting()))));
  }

  private static List<Column<TestPiece>> stretch(PieceLookup lookup) {
    return List.of(
        Column.figure(
            "seam-stretch",
            "sheet.pieces.seam-stretch",
            "%",
            "sheet.pieces.seam-stretch.says",
            Origin.SEAM_STRETCH,
            Format.TENTHS,
            piece -> lookup.result(piece).seamStretch()),
        Column.figure(
            "cloth-stretch",
            "sheet.pieces.cloth-stretch",
            "%",
            "sheet.pieces.cloth-stretch.says",
            Origin.CLOTH_STRETCH,
            Format.TENTHS,
            piece -> percent(lookup.stretch(piece))),
        Column.figure(
            "seam-share",
            "sheet.pieces.seam-share",
            "%",
            "sheet.pieces.seam-share.says",
            Origin.SEAM_SHARE,
            Format.TENTHS,
            piece -> lookup.result(piece).seamShare()));
  }

  private static List<Column<TestPiece>> pulls(Choices choices) {
    return List.of(
        Column.whole(
            "pulls",
            "sheet.pieces.pulls",
            "sheet.pieces.pulls.says",
            Origin.COUNT,
            piece -> piece.measure().pulls().size()),
        Column.text(
            "all-pulls",
            "sheet.pieces.all-pulls",
            "sheet.pieces.all-pulls.says",
            Origin.TYPED,
            Format.TEXT,
            piece -> pulls(choices, piece.measure())),
        Column.text(
            "broke",
            "sheet.pieces.broke",
            "sheet.pieces.broke.says",
            Origin.TYPED,
            Format.TEXT,
            piece -> choices.broke(piece.measure().broke())));
  }

  private static @Nullable Number end(@Nullable PullReading pull) {
    return pull == null ? null : pull.endMm();
  }

  private static @Nullable Boolean bound(@Nullable PullReading pull) {
    return pull == null ? null : pull.end() == SeamEnd.HELD;
  }

  private static @Nullable Number percent(@Nullable ClothStretch stretch) {
    return stretch == null ? null : stretch.percent();
  }

  private static String pulls(Choices choices, Measure measure) {
    return measure.pulls().stream()
        .map(each -> choices.end(each.end()) + " " + Show.upTo(each.endMm(), 2))
        .collect(Collectors.joining("; "));
  }
}
