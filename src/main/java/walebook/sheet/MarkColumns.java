package walebook.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.compare.assessed.AssessedClass;
import walebook.compare.assessed.AssessedPiece;
import walebook.compare.assessed.MarkWords;
import walebook.record.CheckedBy;
import walebook.record.Marking;
import walebook.record.PieceCheck;
import walebook.record.PieceCode;
import walebook.words.Words;
import walebook.working.Message;

/** The columns of the sheet of marks: a row is one piece, looked over by student and tutor. */
final class MarkColumns {
  private final PieceLookup lookup;
  private final AssessedClass assessed;
  private final Words words;
  private final List<Column<AssessedPiece>> columns = new ArrayList<>();

  private MarkColumns(PieceLookup lookup, AssessedClass assessed, Words words) {
    this.lookup = lookup;
    this.assessed = assessed;
    this.words = words;
  }

  static List<Column<AssessedPiece>> of(PieceLookup lookup, AssessedClass assessed, Words words) {
    return new MarkColumns(lookup, assessed, words).all();
  }

  private List<Column<AssessedPiece>> all() {
    which();
    for (CheckedBy by : CheckedBy.values()) {
      checked(by);
    }
    columns.add(
        Column.text(
            "standing",
            "sheet.checks.standing",
            "sheet.checks.standing.says",
            Origin.PIECE_RESULT,
            Format.TEXT,
            piece -> words.say(piece.standing().says())));
    columns.add(
        Column.figure(
            "comments",
            "sheet.checks.comments",
            "",
            "sheet.checks.comments.says",
            Origin.COUNT,
            Format.TALLY,
            AssessedPiece::comments));
    return columns;
  }

  /** Whose piece it is, and what for. */
  private void which() {
    columns.add(
        Column.text(
            "student",
            "sheet.checks.student",
            "sheet.checks.student.says",
            Origin.PERSON,
            Format.TEXT,
            piece -> lookup.name(piece.studentId())));
    columns.add(
        Column.<AssessedPiece>words(
                "code",
                "sheet.checks.piece",
                "sheet.checks.piece.says",
                Origin.CODE,
                piece -> PieceCode.spoken(piece.code()))
            .wide(10));
    columns.add(
        Column.of(
            "sewn-on",
            "sheet.checks.sewn-on",
            "",
            "sheet.checks.sewn-on.says",
            Origin.TYPED,
            Format.DAY,
            piece -> Value.of(piece.sewnOn())));
    columns.add(
        Column.<AssessedPiece>text(
                "lesson",
                "sheet.checks.lesson",
                "sheet.checks.lesson.says",
                Origin.TYPED,
                Format.LONG_TEXT,
                this::lesson)
            .wide(38));
    columns.add(
        Column.<AssessedPiece>text(
                "criteria",
                "sheet.checks.criteria",
                "sheet.checks.criteria.says",
                Origin.TAGS,
                Format.LONG_TEXT,
                assessed::codesOf)
            .wide(14));
  }

  private void checked(CheckedBy by) {
    String who = Message.name(MarkWords.of(by));
    for (Marking marking : Marking.values()) {
      String what = Message.name(MarkWords.of(marking));
      columns.add(
          new Column<>(
              by.key() + "-" + marking.key(),
              Message.of("sheet.checks.mark", what, who),
              "",
              Message.of("sheet.checks.mark.says", what, who),
              Origin.MARKED,
              Format.TALLY,
              piece -> Value.of(mark(check(piece, by), marking))));
    }
    columns.add(
        new Column<AssessedPiece>(
                by.key() + "-help",
                Message.of("sheet.checks.help", who),
                "",
                Message.of("sheet.checks.help.says", who),
                Origin.TYPED,
                Format.WORD,
                piece -> Value.of(help(check(piece, by))))
            .wide(10));
    columns.add(
        new Column<>(
            by.key() + "-on",
            Message.of("sheet.checks.checked-on", who),
            "",
            Message.of("sheet.checks.checked-on.says", who),
            Origin.TYPED,
            Format.DAY,
            piece -> {
              PieceCheck check = check(piece, by);
              return check == null ? Value.NOTHING : Value.of(check.checkedOn());
            }));
  }

  private @Nullable String lesson(AssessedPiece piece) {
    return piece.lessonId() == null ? null : lookup.lessons().get(piece.lessonId());
  }

  private static @Nullable PieceCheck check(AssessedPiece piece, CheckedBy by) {
    return by == CheckedBy.SELF ? piece.self() : piece.tutor();
  }

  private static @Nullable Integer mark(@Nullable PieceCheck check, Marking marking) {
    return check == null ? null : check.mark(marking);
  }

  private @Nullable String help(@Nullable PieceCheck check) {
    return check == null || check.help() == null ? null : words.say(MarkWords.of(check.help()));
  }
}
