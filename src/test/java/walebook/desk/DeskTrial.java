package walebook.desk;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCombination;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import walebook.act.piece.PieceField;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.RescueReport;
import walebook.book.open.SqliteCare;
import walebook.desk.common.BackupsViewModel;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.desk.common.Worker;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.desk.pieces.LogFormViewModel;
import walebook.desk.pieces.PiecesView;
import walebook.desk.pieces.PiecesViewModel;
import walebook.desk.shell.PlaceEntry;
import walebook.desk.shell.Shell;
import walebook.desk.today.TodayView;
import walebook.desk.today.TodayViewModel;
import walebook.desk.welcome.Ways;
import walebook.desk.welcome.WelcomeView;
import walebook.desk.welcome.WelcomeViewModel;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.record.Parent;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.words.Words;

/**
 * Writes PNG files of the student's places, to be looked at: light and dark, empty and full, large
 * letters and long names. The first argument is the folder.
 */
public final class DeskTrial {
  private DeskTrial() {}

  public static void main(String[] args) {
    Application.launch(Trial.class, args);
  }

  /** The window. */
  public static final class Trial extends Application {
    private final Look look = new Look(Theme.LIGHT, TextSize.USUAL);
    private final Words words = Words.english();
    private Scene scene = new Scene(new Label(), 1280, 800);

    @Override
    public void start(Stage stage) throws IOException {
      look.dress(scene);
      stage.setScene(scene);
      stage.show();
      File folder = new File(getParameters().getRaw().get(0));
      Path books = Files.createTempDirectory("trial");
      try (PlannedClass made = PlannedClass.in(books.resolve("class.walebook"), 1)) {
        full(made, folder);
      }
      try (PlannedClass made = PlannedClass.in(books.resolve("three.walebook"), 3)) {
        three(made, folder);
      }
      welcome(folder, books);
      Platform.exit();
    }

    private void full(PlannedClass made, File folder) throws IOException {
      Session session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
      TodayViewModel today = new TodayViewModel(session);
      PiecesViewModel pieces = new PiecesViewModel(session, Unit.MM);
      Shell shell = shell(session, today, pieces);
      both(folder, "today-who");
      shell.show("pieces");
      both(folder, "list-empty");
      pieces(made);
      Student student = made.room.first;
      today.choose(student);
      session.changed();
      both(folder, "list");
      shell.show("today");
      both(folder, "today");
      session.wish(new Wish("pieces", Wish.What.LOG_PLANNED, made.planned(1)));
      shell.show("pieces");
      both(folder, "form-start");
      LogFormViewModel form = pieces.form();
      type(form, PieceField.EDGE_SEWN, "103,5");
      type(form, PieceField.EDGE_PRESSED, "10x1");
      type(form, PieceField.END, "gave");
      type(form, PieceField.END_LENGTH, "140");
      type(form, PieceField.RELEASED, "4 1/8 in");
      type(form, PieceField.GRADE, "3");
      form.faults().choose("wavy-seam");
      form.save();
      both(folder, "form");
      form.settingsOpenProperty().set(true);
      both(folder, "form-open");
      type(form, PieceField.EDGE_PRESSED, "101");
      type(form, PieceField.END_LENGTH, "90");
      form.save();
      both(folder, "form-asks");
      type(form, PieceField.END_LENGTH, "140");
      form.save();
      both(folder, "saved");
      pieces.again(made.room.book.pieces().list(walebook.book.PieceFilter.ALL).get(0).id());
      type(form, PieceField.DIAL_WIDTH, "3.5");
      both(folder, "again");
      pieces.toList();
      pieces.rest();
    }

    private void three(PlannedClass made, File folder) throws IOException {
      Session session = made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
      TodayViewModel today = new TodayViewModel(session);
      PiecesViewModel pieces = new PiecesViewModel(session, Unit.MM);
      Shell shell = shell(session, today, pieces);
      session.wish(new Wish("pieces", Wish.What.LOG_PLANNED, made.planned(0)));
      shell.show("pieces");
      type(pieces.form(), PieceField.END, "held");
      type(pieces.form(), PieceField.END_LENGTH, "160");
      scroll(0.55);
      write(folder, "three");
      scroll(1);
      write(folder, "form-end");
      scene
          .getRoot()
          .lookupAll("#choose-fault .fold-button")
          .forEach(each -> ((javafx.scene.control.Button) each).fire());
      pieces.form().faults().choose("wavy-seam");
      scroll(0.8);
      write(folder, "faults");
      look.textSizeProperty().set(new TextSize(200));
      write(folder, "faults-200");
      pieces.rest();
      look.textSizeProperty().set(TextSize.USUAL);
    }

    private void welcome(File folder, Path books) throws IOException {
      Ways ways =
          new Ways() {
            @Override
            public List<Path> recent() {
              return List.of(
                  books.resolve("tuesday-evening.walebook"),
                  books.resolve("a-very-long-name-of-a-class-in-the-harbour-hall-2026.walebook"));
            }

            @Override
            public Answer<Book> makeBook(Path file, String name) {
              return Answer.bad(
                  Problem.refuse("book.exists", new Place.Path("class.walebook"), "", ""));
            }

            @Override
            public Answer<Book> openBook(Path file) {
              return makeBook(file, "");
            }

            @Override
            public Answer<Book> openDemo() {
              return makeBook(books, "");
            }

            @Override
            public Answer<RescueReport> rescue(Path damaged) {
              throw new AssertionError("nothing is damaged here");
            }

            @Override
            public Answer<Book> goBack(Path file, Path copy) {
              throw new AssertionError("nothing is damaged here");
            }
          };
      WelcomeViewModel model =
          new WelcomeViewModel(
              words, Worker.sameThread(), PlannedClass.OneFile.NONE, ways, book -> {}, fault -> {});
      scene.setRoot(
          new WelcomeView(
              words,
              model,
              (file, back) ->
                  new BackupsViewModel(
                      file,
                      new SqliteCare(),
                      words,
                      Classroom.CLOCK,
                      Worker.sameThread(),
                      fault -> {},
                      back)));
      both(folder, "welcome");
      model.make();
      model.demo();
      both(folder, "welcome-problem");
    }

    private static void pieces(PlannedClass made) {
      TestPiece first = made.room.piece(SeamEnd.HELD, 160);
      made.room.book.pieces().add(first);
      TestPiece before = made.room.piece(SeamEnd.GAVE, 128);
      made.room.book.pieces().add(before);
      made.room
          .book
          .pieces()
          .add(
              made.room.piece(
                  made.room.first.id(),
                  3.5,
                  List.of(new PullReading(1, SeamEnd.GAVE, 146)),
                  List.of(walebook.book.Classroom.fault("wavy-seam", 2)),
                  new Parent(before.id(), "dial-width")));
    }

    private Shell shell(Session session, TodayViewModel today, PiecesViewModel pieces) {
      Shell shell =
          new Shell(
              words,
              look,
              List.of(
                  entry("today", "Today", 1, () -> new TodayView(words, today)),
                  entry("pieces", "Test pieces", 2, () -> new PiecesView(words, pieces)),
                  entry("cloths", "Cloths", 3, Label::new),
                  entry("lessons", "Lessons", 4, Label::new),
                  entry("class", "Class", 5, Label::new),
                  entry("term", "Term record", 6, Label::new)));
      shell.bookName(session.book().info().name());
      scene.setRoot(shell);
      return shell;
    }

    private static PlaceEntry entry(
        String key, String title, int digit, java.util.function.Supplier<javafx.scene.Node> view) {
      return new PlaceEntry(key, title, KeyCombination.keyCombination("Ctrl+" + digit), view);
    }

    private static void type(LogFormViewModel form, PieceField field, String text) {
      form.field(field).textProperty().set(text);
      form.field(field).leave();
    }

    private void scroll(double to) {
      layout();
      scene
          .getRoot()
          .lookupAll(".place-frame .scroll-pane")
          .forEach(each -> ((javafx.scene.control.ScrollPane) each).setVvalue(to));
    }

    private void both(File folder, String name) throws IOException {
      for (Theme theme : Theme.values()) {
        look.themeProperty().set(theme);
        write(folder, name + "-" + theme.name().toLowerCase(Locale.ROOT));
      }
      look.themeProperty().set(Theme.LIGHT);
      look.textSizeProperty().set(new TextSize(200));
      write(folder, name + "-200");
      look.textSizeProperty().set(TextSize.USUAL);
    }

    private void layout() {
      // Wrapped text settles its height in a second pass.
      for (int pass = 0; pass < 3; pass++) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
      }
    }

    private void write(File folder, String name) throws IOException {
      layout();
      ImageIO.write(
          SwingFXUtils.fromFXImage(scene.snapshot(null), null),
          "png",
          new File(folder, name + ".png"));
    }
  }
}
