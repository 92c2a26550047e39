package walebook.sheet;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.compare.odd.OddFindings;
import walebook.compare.odd.OddReading;
import walebook.record.Parent;
import walebook.record.PieceCode;
import walebook.record.TestPiece;
import walebook.words.Words;

/** What was seen, what it follows, and when it was logged. */
final class PieceSeenColumns {
  /** The column that marks rows which deserve a second look. */
  static final String ODD = "odd";

  private PieceSeenColumns() {}

  static List<Column<TestPiece>> of(PieceLookup lookup, Choices choices) {
    return Stream.of(
            seen(lookup, choices),
            odd(lookup, choices.words()),
            follows(lookup, choices.words()),
            kept(lookup))
        .flatMap(List::stream)
        .toList();
  }

  private static List<Column<TestPiece>> seen(PieceLookup lookup, Choices choices) {
    return List.of(
        Column.whole(
            "grade",
            "sheet.pieces.grade",
            "sheet.pieces.grade.says",
            Origin.TYPED,
            piece -> piece.seen().grade()),
        Column.words(
            "outcome",
            "sheet.pieces.outcome",
            "sheet.pieces.outcome.says",
            Origin.TYPED,
            piece -> choices.outcome(piece.seen().outcome())),
        Column.text(
            "faults",
            "sheet.pieces.faults",
            "sheet.pieces.faults.says",
            Origin.TYPED,
            Format.TITLE,
            piece -> faults(lookup, choices, piece)),
        Column.whole(
            "worst-fault",
            "sheet.pieces.worst-fault",
            "sheet.pieces.worst-fault.says",
            Origin.FAULT,
            piece -> lookup.result(piece).worstFault()));
  }

  private static List<Column<TestPiece>> odd(PieceLookup lookup, Words words) {
    return List.of(
        Column.text(
            ODD,
            "sheet.pieces.odd",
            "sheet.pieces.odd.says",
            Origin.ODD,
            Format.TEXT,
            piece -> odd(lookup, words, piece)),
        Column.text(
            "mark",
            "sheet.pieces.mark",
            "sheet.pieces.mark.says",
            Origin.TYPED,
            Format.TEXT,
            piece -> marks(lookup, words, piece)));
  }

  private static String odd(PieceLookup lookup, Words words, TestPiece piece) {
    return lookup.oddOf(piece).stream()
        .map(
            each ->
                words.say("compare.value." + each.value().key())
                    + ": "
                    + words.say(OddFindings.of(each).get(0)))
        .collect(Collectors.joining("; "));
  }

  private static String marks(PieceLookup lookup, Words words, TestPiece piece) {
    return lookup.oddOf(piece).stream()
        .map(OddReading::mark)
        .filter(Objects::nonNull)
        .map(
            mark ->
                words.say("compare.value." + mark.value().key())
                    + ": "
                    + words.say(
                        switch (mark.mark()) {
                          case KEPT -> "sheet.mark.kept";
                          case MISTYPED -> "sheet.mark.mistyped";
                          case SET_ASIDE -> "sheet.mark.set-aside";
                        }))
        .collect(Collectors.joining("; "));
  }

  private static List<Column<TestPiece>> follows(PieceLookup lookup, Words words) {
    ChangedText changed = new ChangedText(words);
    return List.of(
        Column.words(
            "parent",
            "sheet.pieces.parent",
            "sheet.pieces.parent.says",
            Origin.TYPED,
            piece -> parent(lookup, piece.parent())),
        Column.text(
            "changed",
            "sheet.pieces.changed",
            "sheet.pieces.changed.says",
            Origin.ONE_CHANGE,
            Format.TEXT,
            piece -> piece.parent() == null ? null : changed.says(piece.parent())));
  }

  private static List<Column<TestPiece>> kept(PieceLookup lookup) {
    return List.of(
        Column.text(
            "remark",
            "sheet.pieces.remark",
            "sheet.pieces.remark.says",
            Origin.REMARK,
            Format.LONG_TEXT,
            piece -> piece.seen().remark()),
        Column.of(
            "logged",
            "sheet.pieces.logged",
            "",
            "sheet.pieces.logged.says",
            Origin.SAVED,
            Format.MOMENT,
            piece -> new Value.Moment(lookup.local(piece.stamp().created()))),
        Column.of(
            "last-change",
            "sheet.pieces.last-change",
            "",
            "sheet.pieces.last-change.says",
            Origin.SAVED,
            Format.MOMENT,
            piece -> new Value.Moment(lookup.local(piece.stamp().changed()))));
  }

  private static String faults(PieceLookup lookup, Choices choices, TestPiece piece) {
    return piece.seen().faults().stream()
        .map(
            each ->
                choices
                    .words()
                    .say(
                        "sheet.fault",
                        lookup.faults().getOrDefault(each.fault(), each.fault()),
                        choices.place(each.place()),
                        each.severity(),
                        choices.when(each.when())))
        .collect(Collectors.joining("; "));
  }

  private static @Nullable String parent(PieceLookup lookup, @Nullable Parent parent) {
    String code = parent == null ? null : lookup.codes().apply(parent.pieceId());
    return code == null ? null : PieceCode.spoken(code);
  }
}
