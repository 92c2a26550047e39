package walebook.desk.lessons;

import javafx.scene.control.TableColumn;
import javafx.scene.layout.BorderPane;
import walebook.act.lesson.ReadLessons;
import walebook.desk.common.ColumnTable;
import walebook.words.Words;

/** The lessons that the class took up. */
final class TakenTable extends BorderPane {
  private static final int ROWS = 8;
  private static final double LESSON_EMS = 11;

  TakenTable(Words words, LessonsViewModel model) {
    ColumnTable<ReadLessons.Taken> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.lessons.taken"));
    table.days(words.say("desk.lessons.col.on"), 7.8, each -> each.lesson().taughtOn());
    TableColumn<ReadLessons.Taken, String> lesson =
        table.words(
            words.say("desk.lessons.col.lesson"), LESSON_EMS, each -> each.lesson().title());
    table.figures(
        words.say("desk.lessons.col.planned"),
        10,
        each -> (double) each.planned(),
        each -> planned(words, each));
    table.figures(
        words.say("desk.lessons.col.logged"),
        5.5,
        each -> (double) each.logged(),
        each -> Integer.toString(each.logged()));
    table.figures(
        words.say("desk.lessons.col.own"),
        4.5,
        each -> (double) each.own(),
        each -> Integer.toString(each.own()));
    table.takesRest(lesson, LESSON_EMS);
    table.getItems().setAll(model.taken());
    table.asHighAs(ROWS);
    table.opens(each -> model.plan(each.lesson().id()));
    setCenter(table);
  }

  private static String planned(Words words, ReadLessons.Taken each) {
    if (each.planned() == 0) {
      return "0";
    }
    return each.measured()
        ? words.say("desk.lessons.taken.readings", each.planned())
        : words.say("desk.lessons.taken.pieces", each.planned());
  }
}
