package walebook.desk.lessons;

import java.util.List;
import java.util.function.Function;
import javafx.scene.control.TableView;
import walebook.act.lesson.ReadLessons;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.WrappedCell;
import walebook.words.Words;

/**
 * What each student is asked for, a row each: whose it is, which of theirs, and what a pane adds.
 *
 * @param <T> what is asked for
 */
final class DealtTable<T> {
  private static final int ROWS = 24;

  private final ColumnTable<Row<T>> table = new ColumnTable<>();

  /** Something in somebody's hands; {@code nth} counts from 1. */
  private record Row<T>(String student, int nth, T what) {}

  DealtTable(Words words, ReadLessons.ClassPlan plan, Function<ReadLessons.Part, List<T>> dealt) {
    table.setAccessibleText(words.say("desk.lessons.plan.title", plan.lesson().title()));
    // The columns share the room there is: nothing is ever off to the side.
    table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    table
        .words(words.say("desk.lessons.col.student"), 8, Row::student)
        .setCellFactory(WrappedCell::new);
    table.words(words.say("desk.lessons.col.nth"), 3, row -> String.valueOf(row.nth()));
    for (ReadLessons.Part part : plan.parts()) {
      int nth = 0;
      for (T each : dealt.apply(part)) {
        table.getItems().add(new Row<>(part.name(), ++nth, each));
      }
    }
    table.asHighAs(ROWS);
  }

  DealtTable<T> column(String title, double ems, Function<T, String> says) {
    table.words(title, ems, row -> says.apply(row.what())).setCellFactory(WrappedCell::new);
    return this;
  }

  TableView<?> table() {
    return table;
  }
}
