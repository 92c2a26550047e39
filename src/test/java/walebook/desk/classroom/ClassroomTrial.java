package walebook.desk.classroom;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import walebook.act.book.DemoBook;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.desk.Pulses;
import walebook.desk.RoomBook;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.quantity.Unit;
import walebook.record.SchoolClass;
import walebook.record.SeamEnd;

/**
 * Writes PNG files of every part of the class's place, to be looked at: the demo class, long names,
 * an empty book, one student with one piece; light, dark and in large letters. The argument is the
 * folder.
 */
public final class ClassroomTrial {
  private ClassroomTrial() {}

  public static void main(String[] args) {
    Application.launch(Trial.class, args);
  }

  /** The window. */
  public static final class Trial extends Application {
    private final Look look = new Look(Theme.LIGHT, TextSize.USUAL);

    @Override
    public void start(Stage stage) throws IOException {
      Path folder = Path.of(getParameters().getRaw().get(0));
      Path books = Files.createTempDirectory("class-trial");
      SqliteFiles files = new SqliteFiles();
      Scene scene = new Scene(new Pane(), 1280, 800);
      look.dress(scene);
      stage.setScene(scene);
      stage.show();
      try (Book demo = DemoBook.open(books.resolve("demo.walebook"))) {
        walk(scene, Sessions.of(demo, demo.classes().all().get(0), null), folder, "demo");
      }
      try (Book empty =
          files
              .make(books.resolve("empty.walebook"), "New", false, Unit.MM, Classroom.CLOCK)
              .value()) {
        walk(scene, Sessions.of(empty, none(), null), folder, "empty");
      }
      try (Classroom room = RoomBook.in(books.resolve("long.walebook"))) {
        walk(scene, Sessions.of(room), folder, "long");
      }
      try (Classroom room = Classroom.in(books.resolve("one.walebook"))) {
        room.book.pieces().add(room.piece(SeamEnd.GAVE, 140));
        walk(scene, Sessions.of(room), folder, "one");
      }
      Platform.exit();
    }

    private static @Nullable SchoolClass none() {
      return null;
    }

    private void walk(Scene scene, Session session, Path folder, String name) throws IOException {
      session.namesHiddenProperty().set(false);
      ClassroomView view = new ClassroomView(session, look);
      scene.setRoot(view);
      settle(view);
      layout(scene);
      List<ToggleButton> parts =
          view.lookupAll(".segments .toggle-button").stream()
              .map(ToggleButton.class::cast)
              .toList();
      for (ToggleButton part : parts) {
        part.fire();
        settle(view);
        String file = name + "-" + part.getText().replace(' ', '-');
        for (Theme theme : Theme.values()) {
          look.themeProperty().set(theme);
          write(scene, folder, file + "-" + theme.name().toLowerCase(java.util.Locale.ROOT), 800);
        }
        look.themeProperty().set(Theme.LIGHT);
        write(scene, folder, file + "-tall", 3200);
        look.textSizeProperty().set(new TextSize(200));
        write(scene, folder, file + "-200", 800);
        look.textSizeProperty().set(TextSize.USUAL);
      }
    }

    private static void settle(ClassroomView view) {
      do {
        Pulses.some();
      } while (!view.isAtRest());
    }

    private static void layout(Scene scene) {
      // Wrapped text settles its height in a second pass.
      for (int pass = 0; pass < 3; pass++) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
      }
    }

    private static void write(Scene scene, Path folder, String name, double tall)
        throws IOException {
      scene.getWindow().setHeight(tall);
      scene.getRoot().resize(1280, tall);
      layout(scene);
      var image = scene.getRoot().snapshot(null, null);
      File file = folder.resolve(name + ".png").toFile();
      ImageIO.write(SwingFXUtils.fromFXImage(image, null), "png", file);
    }
  }
}
