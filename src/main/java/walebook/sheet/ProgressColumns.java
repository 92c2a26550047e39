package walebook.sheet;

import java.util.ArrayList;
import java.util.List;
import walebook.compare.ClassProgress;
import walebook.record.Lesson;
import walebook.working.Message;

/** The columns of the sheet of progress: a row is one student, two columns are one lesson. */
final class ProgressColumns {
  /** Room for a long title in three lines, written upwards. */
  private static final int LESSON = 9;

  private ProgressColumns() {}

  static List<Column<ClassProgress.Row>> of(TermFacts facts) {
    List<Column<ClassProgress.Row>> columns = new ArrayList<>();
    columns.add(
        Column.text(
            "student",
            "sheet.progress.student",
            "sheet.progress.student.says",
            Origin.PERSON,
            Format.TEXT,
            row -> facts.shown(row.student())));
    List<Lesson> lessons = facts.progress().lessons();
    for (int i = 0; i < lessons.size(); i++) {
      String title = facts.lookup().lessons().getOrDefault(lessons.get(i).id(), "");
      columns.addAll(lesson(i, facts.cover().apply(title)));
    }
    columns.addAll(totals());
    return columns;
  }

  private static List<Column<ClassProgress.Row>> lesson(int place, String title) {
    String nth = String.valueOf(place + 1);
    return List.of(
        new Column<ClassProgress.Row>(
                "lesson-" + nth + "-logged",
                Message.of("sheet.progress.lesson-logged", nth, title),
                "",
                Message.of("sheet.progress.lesson-logged.says", title),
                Origin.PLAN,
                Format.TALLY,
                row -> Value.of(row.perLesson().get(place).logged()))
            .wide(LESSON),
        new Column<ClassProgress.Row>(
                "lesson-" + nth + "-planned",
                Message.of("sheet.progress.lesson-planned", nth, title),
                "",
                Message.of("sheet.progress.lesson-planned.says", title),
                Origin.PLAN,
                Format.TALLY,
                row -> Value.of(row.perLesson().get(place).planned()))
            .wide(LESSON));
  }

  private static List<Column<ClassProgress.Row>> totals() {
    return List.of(
        Column.whole(
            "logged",
            "sheet.progress.logged",
            "sheet.progress.logged.says",
            Origin.PLAN,
            ClassProgress.Row::logged),
        Column.whole(
            "planned",
            "sheet.progress.planned",
            "sheet.progress.planned.says",
            Origin.PLAN,
            ClassProgress.Row::planned),
        Column.whole(
            "own",
            "sheet.progress.own",
            "sheet.progress.own.says",
            Origin.COUNT,
            ClassProgress.Row::own),
        Column.whole(
            "readings",
            "sheet.progress.readings",
            "sheet.progress.readings.says",
            Origin.COUNT,
            ClassProgress.Row::readings),
        Column.of(
            "last",
            "sheet.progress.last",
            "",
            "sheet.progress.last.says",
            Origin.LATEST,
            Format.DAY,
            row -> Value.of(row.last())));
  }
}
