package walebook.desk.typing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.desk.common.Worker;

/** One cell is typed in at a time, and whoever asks is told once. */
@SuppressWarnings("NullAway.Init")
class GridCursorTest {
  @TempDir Path folder;

  private PlannedClass made;
  private GridCursor cursor;

  @BeforeEach
  void open() {
    made = PlannedClass.in(folder.resolve("a.walebook"), 1);
    Session session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
    session.schoolClassProperty().set(made.room.schoolClass);
    TypeInViewModel model = new TypeInViewModel(session);
    session.wish(new Wish(TypeInViewModel.PLACE, Wish.What.OPEN, made.lesson.id()));
    cursor = model.cursor();
    cursor.go(0, "remark");
  }

  @AfterEach
  void close() {
    made.close();
  }

  @Test
  void goingWhereOneIsTellsNobody() {
    List<String> told = new ArrayList<>();
    cursor.atProperty().addListener(from -> told.add("told"));
    cursor.go(0, "remark");
    assertThat(told).isEmpty();
    cursor.go(0, "cloth");
    assertThat(told).hasSize(1);
  }

  /** A field that takes the focus says where it is; fields of rows gone by are let go meanwhile. */
  @Test
  void everyoneIsToldThoughOneAnswersAndOneLetsGo() {
    List<String> told = new ArrayList<>();
    List<Throwable> broken = new ArrayList<>();
    Thread.UncaughtExceptionHandler before = Thread.currentThread().getUncaughtExceptionHandler();
    Thread.currentThread().setUncaughtExceptionHandler((thread, thrown) -> broken.add(thrown));
    try {
      cursor.atProperty().addListener((from, old, now) -> cursor.go(0, "cloth"));
      cursor.atProperty().addListener(letsGo());
      cursor.atProperty().addListener((from, old, now) -> told.add("last"));
      cursor.go(0, "cloth");
    } finally {
      Thread.currentThread().setUncaughtExceptionHandler(before);
    }
    assertThat(broken).isEmpty();
    assertThat(told).containsExactly("last");
  }

  private ChangeListener<GridCursor.Spot> letsGo() {
    return new ChangeListener<>() {
      @Override
      public void changed(
          ObservableValue<? extends GridCursor.Spot> from,
          GridCursor.Spot old,
          GridCursor.Spot now) {
        from.removeListener(this);
      }
    };
  }
}
