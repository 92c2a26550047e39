package walebook.sheet;

import java.util.List;
import java.util.stream.Stream;

/** The columns of the planned readings: a row is one cloth along one grain for one student. */
final class ReadingPlanColumns {
  private ReadingPlanColumns() {}

  static List<Column<ReadingPlanLine>> of(PieceLookup lookup, Choices choices) {
    return Stream.of(whose(lookup, choices), asked(lookup, choices)).flatMap(List::stream).toList();
  }

  private static List<Column<ReadingPlanLine>> whose(PieceLookup lookup, Choices choices) {
    return List.of(
        Column.text(
            "lesson",
            "sheet.reading-plan.lesson",
            "sheet.reading-plan.lesson.says",
            Origin.PLAN,
            Format.TITLE,
            ReadingPlanLine::lesson),
        Column.text(
            "student",
            "sheet.reading-plan.student",
            "sheet.reading-plan.student.says",
            Origin.PERSON,
            Format.TEXT,
            line -> lookup.name(line.asked().planned().studentId())),
        Column.whole(
            "place",
            "sheet.reading-plan.place",
            "sheet.reading-plan.place.says",
            Origin.PLAN,
            line -> line.asked().planned().place()),
        Column.words(
            "control",
            "sheet.reading-plan.control",
            "sheet.reading-plan.control.says",
            Origin.PLAN,
            line -> choices.yes(line.asked().planned().control())));
  }

  private static List<Column<ReadingPlanLine>> asked(PieceLookup lookup, Choices choices) {
    return List.of(
        Column.words(
            "slot",
            "sheet.reading-plan.slot",
            "sheet.reading-plan.slot.says",
            Origin.PLAN,
            line -> line.asked().planned().slot()),
        Column.text(
            "cloth",
            "sheet.reading-plan.cloth",
            "sheet.reading-plan.cloth.says",
            Origin.PLAN,
            Format.TEXT,
            line -> lookup.name(line.asked().planned().clothId())),
        Column.words(
            "grain",
            "sheet.reading-plan.grain",
            "sheet.reading-plan.grain.says",
            Origin.PLAN,
            line -> choices.grain(line.asked().planned().grain())),
        Column.whole(
            "repeats",
            "sheet.reading-plan.repeats",
            "sheet.reading-plan.repeats.says",
            Origin.PLAN,
            line -> line.asked().planned().repeats()),
        Column.whole(
            "measured",
            "sheet.reading-plan.measured",
            "sheet.reading-plan.measured.says",
            Origin.COUNT,
            line -> line.asked().measured().size()),
        Column.words(
            "done",
            "sheet.reading-plan.done",
            "sheet.reading-plan.done.says",
            Origin.COUNT,
            line -> choices.yes(line.asked().isDone())));
  }
}
