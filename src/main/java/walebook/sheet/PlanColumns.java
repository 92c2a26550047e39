package walebook.sheet;

import java.util.List;
import java.util.stream.Stream;
import walebook.record.PieceCode;

/** The columns of the plan: a row is one planned piece. */
final class PlanColumns {
  private PlanColumns() {}

  static List<Column<PlanLine>> of(PieceLookup lookup, Choices choices) {
    return Stream.of(first(lookup, choices), second(lookup, choices))
        .flatMap(List::stream)
        .toList();
  }

  private static List<Column<PlanLine>> first(PieceLookup lookup, Choices choices) {
    return List.of(
        Column.text(
            "lesson",
            "sheet.plan.lesson",
            "sheet.plan.lesson.says",
            Origin.PLAN,
            Format.TITLE,
            PlanLine::lesson),
        Column.text(
            "student",
            "sheet.plan.student",
            "sheet.plan.student.says",
            Origin.PERSON,
            Format.TEXT,
            line -> lookup.name(line.planned().studentId())),
        Column.whole(
            "place",
            "sheet.plan.place",
            "sheet.plan.place.says",
            Origin.PLAN,
            line -> line.planned().place()),
        Column.words(
            "code",
            "sheet.plan.code",
            "sheet.plan.code.says",
            Origin.CODE,
            line -> PieceCode.spoken(line.planned().code())),
        Column.words(
            "control",
            "sheet.plan.control",
            "sheet.plan.control.says",
            Origin.PLAN,
            line -> choices.yes(line.planned().control())));
  }

  private static List<Column<PlanLine>> second(PieceLookup lookup, Choices choices) {
    return List.of(
        Column.text(
            "cloth",
            "sheet.plan.cloth",
            "sheet.plan.cloth.says",
            Origin.PLAN,
            Format.TEXT,
            line -> lookup.name(line.planned().clothId())),
        Column.words(
            "grain",
            "sheet.plan.grain",
            "sheet.plan.grain.says",
            Origin.PLAN,
            line -> choices.grain(line.planned().asked().grain())),
        Column.words(
            "stitch",
            "sheet.plan.stitch",
            "sheet.plan.stitch.says",
            Origin.PLAN,
            line -> line.planned().asked().stitchType()),
        Column.figure(
            "width",
            "sheet.plan.width",
            "",
            "sheet.plan.width.says",
            Origin.PLAN,
            Format.HUNDREDTHS,
            line -> line.planned().asked().dialWidth()),
        Column.figure(
            "length",
            "sheet.plan.length",
            "",
            "sheet.plan.length.says",
            Origin.PLAN,
            Format.HUNDREDTHS,
            line -> line.planned().asked().dialLength()),
        Column.words(
            "logged",
            "sheet.plan.logged",
            "sheet.plan.logged.says",
            Origin.PLAN,
            line -> choices.yes(line.logged())));
  }
}
