package walebook.desk;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import javafx.stage.Window;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.desk.classroom.ClassroomView;
import walebook.desk.cloths.ClothsView;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.desk.lessons.LessonsView;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.desk.settings.SettingsView;
import walebook.desk.shell.PlaceEntry;
import walebook.desk.shell.Shell;
import walebook.desk.term.TermView;
import walebook.quantity.Unit;
import walebook.record.SchoolClass;
import walebook.words.Words;

/** Shows the room's places on an invented class; with a folder it writes PNG files of them. */
public final class RoomTrial {
  private RoomTrial() {}

  /** Opens the window, or writes the files and ends. */
  public static void main(String[] args) {
    Application.launch(Trial.class, args);
  }

  /** The window. */
  public static final class Trial extends Application {
    private final Words words = Words.english();
    private final Look look = new Look(Theme.LIGHT, TextSize.USUAL);
    private @Nullable Path folder;

    @Override
    public void start(Stage stage) throws IOException {
      Path books = Files.createTempDirectory("room");
      Classroom room = RoomBook.in(books.resolve("full.walebook"));
      Book empty =
          new SqliteFiles()
              .make(books.resolve("empty.walebook"), "New", false, Unit.MM, Classroom.CLOCK)
              .value();
      List<String> args = getParameters().getRaw();
      folder = args.isEmpty() ? null : Path.of(args.get(0));
      Shell full = shell(session(room.book, room.schoolClass));
      Scene scene = new Scene(full, 1280, 800);
      look.dress(scene);
      stage.setScene(scene);
      stage.show();
      if (folder != null) {
        walk(scene, full);
        Shell bare = shell(session(empty, null));
        scene.setRoot(bare);
        for (String place : List.of("class", "cloths", "lessons", "term", "settings")) {
          bare.show(place);
          Pulses.some();
          both(scene, "empty-" + place);
        }
        Platform.exit();
      }
    }

    private Session session(Book book, @Nullable SchoolClass of) {
      Session session = Sessions.bare(book, Worker.sameThread(), PlannedClass.OneFile.NONE);
      session.schoolClassProperty().set(of);
      return session;
    }

    private Shell shell(Session session) {
      Shell shell =
          new Shell(
              words,
              look,
              List.of(
                  entry("class", 6, () -> new ClassroomView(session, look)),
                  entry("cloths", 3, () -> new ClothsView(session)),
                  entry("lessons", 5, () -> new LessonsView(session, look)),
                  entry("term", 7, () -> new TermView(session, new SqliteFiles())),
                  entry(
                      "settings", 8, () -> new SettingsView(session, Sessions.backups(session)))));
      shell.bookName(session.book().info().name());
      return shell;
    }

    private PlaceEntry entry(String key, int digit, Supplier<Node> view) {
      return new PlaceEntry(
          key,
          words.say("desk." + key + ".title"),
          KeyCombination.keyCombination("Ctrl+" + digit),
          view);
    }

    private void walk(Scene scene, Shell shell) throws IOException {
      shell.show("class");
      Pulses.some();
      both(scene, "class");
      press(scene, words.say("desk.class.show-large"));
      Window board = Window.getWindows().get(Window.getWindows().size() - 1);
      write(board.getScene(), "board");
      board.hide();
      enter(scene, 2);
      scroll(scene);
      both(scene, "class-open");
      look.textSizeProperty().set(new TextSize(200));
      scroll(scene);
      write(scene, "class-200");
      look.textSizeProperty().set(TextSize.USUAL);
      press(scene, words.say("desk.class.progress"));
      Pulses.some();
      both(scene, "progress");
      shell.show("cloths");
      both(scene, "cloths");
      enter(scene, 1);
      both(scene, "cloth-card");
      press(scene, words.say("desk.cloths.measure"));
      type(scene, 1, "150");
      type(scene, 2, "10x4");
      press(scene, words.say("desk.common.save"));
      both(scene, "reading");
      type(scene, 2, "103");
      press(scene, "how it was done");
      look.textSizeProperty().set(new TextSize(200));
      write(scene, "reading-200");
      look.textSizeProperty().set(TextSize.USUAL);
      press(scene, words.say("desk.cloths.back-card"));
      press(scene, words.say("desk.cloths.edit"));
      both(scene, "cloth-form");
      shell.show("term");
      both(scene, "term");
      enter(scene, 2);
      write(scene, "term-student");
      press(scene, words.say("desk.term.machines"));
      write(scene, "machines");
      enter(scene, 0);
      both(scene, "machine-card");
      press(scene, words.say("desk.term.back-without"));
      press(scene, words.say("desk.term.export"));
      both(scene, "export");
      shell.show("settings");
      both(scene, "settings");
      shell.show("lessons");
      both(scene, "lessons");
      press(scene, words.say("desk.lessons.read"));
      both(scene, "lesson-read");
      look.textSizeProperty().set(new TextSize(200));
      write(scene, "lesson-read-200");
      look.textSizeProperty().set(TextSize.USUAL);
      press(scene, words.say("desk.lessons.take-up"));
      write(scene, "take-up");
      press(scene, words.say("desk.lessons.back"));
      press(scene, words.say("desk.lessons.back"));
      enter(scene, 0);
      both(scene, "plan");
    }

    private void both(Scene scene, String name) throws IOException {
      for (Theme theme : Theme.values()) {
        look.themeProperty().set(theme);
        write(scene, name + "-" + theme.name().toLowerCase(Locale.ROOT));
      }
      look.themeProperty().set(Theme.LIGHT);
    }

    private void write(Scene scene, String name) throws IOException {
      settle(scene);
      File file = new File(String.valueOf(folder), name + ".png");
      ImageIO.write(SwingFXUtils.fromFXImage(scene.snapshot(null), null), "png", file);
    }

    private static void scroll(Scene scene) {
      settle(scene);
      for (Node each : scene.getRoot().lookupAll(".scroll-pane")) {
        ((ScrollPane) each).setVvalue(1);
      }
    }

    private static void settle(Scene scene) {
      // Wrapped text and scrolled content settle in a later pass.
      for (int pass = 0; pass < 4; pass++) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
      }
    }

    private static void press(Scene scene, String says) {
      settle(scene);
      Set<Node> all = new LinkedHashSet<>(scene.getRoot().lookupAll(".button"));
      all.addAll(scene.getRoot().lookupAll(".toggle-button"));
      for (Node each : all) {
        boolean named = ((Labeled) each).getText().endsWith(says);
        if (named && each instanceof Button button) {
          button.fire();
          return;
        }
        if (named && each instanceof ToggleButton button) {
          button.fire();
          return;
        }
      }
      System.out.println("no button " + says);
    }

    private static void type(Scene scene, int nth, String text) {
      settle(scene);
      List<Node> fields =
          scene.getRoot().lookupAll(".text-field").stream()
              .filter(each -> !(each.getParent() instanceof ComboBox<?>))
              .toList();
      ((TextField) fields.get(nth)).setText(text);
    }

    private static void enter(Scene scene, int row) {
      settle(scene);
      TableView<?> table = (TableView<?>) scene.getRoot().lookup(".table-view");
      table.getSelectionModel().select(row);
      table.fireEvent(
          new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, false, false, false));
    }
  }
}
