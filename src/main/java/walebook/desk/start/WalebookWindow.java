package walebook.desk.start;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.open.SqliteFiles;
import walebook.desk.common.DeskWorker;
import walebook.desk.common.ErrorWindow;
import walebook.desk.common.FaultReport;
import walebook.desk.common.PickFile;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.desk.look.Look;
import walebook.desk.shell.FindField;
import walebook.desk.shell.FindViewModel;
import walebook.desk.shell.Shell;
import walebook.desk.welcome.WelcomeView;
import walebook.desk.welcome.WelcomeViewModel;
import walebook.quantity.Unit;
import walebook.record.SchoolClass;
import walebook.record.Term;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** The window: the welcome first, then the places of the book that was chosen. */
public final class WalebookWindow extends Application {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 800;

  private final Words words = Words.english();
  private final KeptSettings settings = KeptSettings.ofUser();
  private final Look look = new Look(settings.theme(), settings.textSize());
  private final DeskWorker worker = new DeskWorker();
  private final Clock clock = Clock.system(ZoneId.systemDefault());
  private @Nullable Book open;
  private @Nullable Places places;

  /** What an opened book needs before its places can be shown. */
  private record Opened(
      Book book, SharedTables tables, Unit unit, String name, @Nullable SchoolClass newest) {}

  @Override
  public void start(Stage stage) {
    ErrorWindow errors = new ErrorWindow(words, look);
    Thread.currentThread()
        .setUncaughtExceptionHandler((thread, fault) -> errors.show(FaultReport.of(fault)));
    PickFile files = new ChooseFile(stage, words);
    BookWays ways = new BookWays(new SqliteFiles(), settings, clock, Path.of("demo"));
    WelcomeViewModel welcome =
        new WelcomeViewModel(
            words,
            worker,
            files,
            ways,
            book -> opened(stage, files, errors, book),
            fault -> errors.show(FaultReport.of(fault)));
    Scene scene = new Scene(new WelcomeView(words, welcome), WIDTH, HEIGHT);
    look.dress(scene);
    look.themeProperty().addListener((from, old, now) -> keepLook());
    look.textSizeProperty().addListener((from, old, now) -> keepLook());
    stage.setTitle(words.say("desk.start.title"));
    stage.getIcons().add(new Image(resource("walebook.png")));
    stage.setScene(scene);
    stage.setMinWidth(WIDTH / 2);
    stage.setMinHeight(HEIGHT / 2);
    stage.show();
    begin(welcome);
  }

  private void begin(WelcomeViewModel welcome) {
    List<String> args = getParameters().getRaw();
    if (args.contains("demo")) {
      welcome.demo();
    } else if (!args.isEmpty()) {
      welcome.open(Path.of(args.get(0)));
    }
  }

  private void opened(Stage stage, PickFile files, ErrorWindow errors, Book book) {
    open = book;
    settings.opened(book.file());
    worker.run(
        progress -> read(book),
        found -> show(stage, files, errors, found),
        fault -> errors.show(FaultReport.of(fault)));
  }

  private static Opened read(Book book) {
    List<Term> terms = book.terms().all();
    SchoolClass newest =
        book.classes().all().stream()
            .max(Comparator.comparing(each -> startOf(terms, each)))
            .orElse(null);
    return new Opened(
        book, SharedTables.read(), book.info().lengthUnit(), book.info().name(), newest);
  }

  private static java.time.LocalDate startOf(List<Term> terms, SchoolClass each) {
    return terms.stream()
        .filter(term -> term.id().equals(each.termId()))
        .map(Term::startsOn)
        .findFirst()
        .orElse(java.time.LocalDate.MIN);
  }

  private void show(Stage stage, PickFile files, ErrorWindow errors, Opened found) {
    Session session =
        new Session(
            found.book(),
            found.tables(),
            words,
            clock,
            new Random(),
            worker,
            files,
            fault -> errors.show(FaultReport.of(fault)));
    session.remembersIn(settings);
    session.schoolClassProperty().set(found.newest());
    Places all = new Places(session, look, found.unit());
    places = all;
    Shell shell = new Shell(words, look, all.entries());
    all.beside(shell);
    shell.bookName(found.name());
    shell.find(new FindField(words, new FindViewModel(session)));
    session.wishProperty().addListener((from, old, now) -> go(shell, now));
    stage.setTitle(words.say("desk.start.title-of", found.name()));
    stage.getScene().setRoot(shell);
    if (found.newest() == null) {
      session.wish(Wish.show("term"));
    }
  }

  private static void go(Shell shell, @Nullable Wish wish) {
    if (wish != null) {
      shell.show(wish.place());
    }
  }

  private void keepLook() {
    settings.keep(look.theme(), look.textSize());
  }

  @Override
  public void stop() {
    Places shown = places;
    if (shown != null) {
      shown.rest();
    }
    Book last = open;
    if (last != null) {
      last.close();
    }
    worker.close();
    Platform.exit();
  }

  private static String resource(String name) {
    return java.util.Objects.requireNonNull(WalebookWindow.class.getResource(name), name)
        .toExternalForm();
  }
}
