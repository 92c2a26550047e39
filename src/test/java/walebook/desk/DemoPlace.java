package walebook.desk;

import java.nio.file.Path;
import java.util.function.BiFunction;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.stage.Stage;
import walebook.act.book.DemoBook;
import walebook.book.Book;
import walebook.desk.common.Session;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;

/** One place of the demo class's window, as wide as a window of 1280 by 800 leaves it. */
public final class DemoPlace<V extends Parent> implements AutoCloseable {
  /** What the places' names at the left leave of 1280. */
  public static final int WIDE = 1090;

  public final Book book;
  public final Session session;
  public final V view;

  /** Opens a copy of the demo book in the folder and shows the place over it. */
  public DemoPlace(Stage stage, Path folder, BiFunction<Session, Look, V> place) {
    book = DemoBook.open(folder.resolve("demo.walebook"));
    session = Sessions.of(book, book.classes().all().get(0), null);
    Look look = new Look(Theme.LIGHT, TextSize.USUAL);
    view = place.apply(session, look);
    Scene scene = new Scene(view, WIDE, 800);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @Override
  public void close() {
    book.close();
  }
}
