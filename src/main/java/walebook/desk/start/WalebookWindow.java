package walebook.desk.start;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.stage.Stage;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;
import walebook.act.book.BackUpBook;
import walebook.act.book.RestoreBackup;
import walebook.book.Book;
import walebook.book.BookCopy;
import walebook.book.open.SqliteCare;
import walebook.book.open.SqliteFiles;
import walebook.desk.classroom.Rehearsal;
import walebook.desk.common.BackupsViewModel;
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
import walebook.desk.shell.StepsBar;
import walebook.desk.shell.StepsViewModel;
import walebook.desk.welcome.WelcomeView;
import walebook.desk.welcome.WelcomeViewModel;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.record.SchoolClass;
import walebook.record.Term;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** The window: the welcome first, then the places of the book that was chosen. */
public final class WalebookWindow extends Application {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 800;
  private static final Duration BACKUP_EVERY = Duration.minutes(20);

  private final Words words = Words.english();
  private final KeptSettings settings = KeptSettings.ofUser();
  private final Look look = new Look(settings.theme(), settings.textSize());
  private final DeskWorker worker = new DeskWorker();
  private final Clock clock = Clock.system(ZoneId.systemDefault());
  private final Timeline schedule = new Timeline();
  private @Nullable Stage window;
  private @Nullable Book open;
  private @Nullable Places places;
  private boolean wentBack;

  /** What an opened book needs before its places can be shown. */
  private record Opened(
      Book book, SharedTables tables, Unit unit, String name, @Nullable SchoolClass newest) {}

  @Override
  public void start(Stage stage) {
    window = stage;
    ErrorWindow errors = new ErrorWindow(words, look);
    Thread.currentThread()
        .setUncaughtExceptionHandler((thread, fault) -> errors.show(FaultReport.of(fault)));
    PickFile files = new ChooseFile(stage, words, settings::recentBooks);
    BookWays ways = new BookWays(new SqliteFiles(), settings, words, clock, Path.of("demo"));
    WelcomeViewModel welcome =
        new WelcomeViewModel(
            words,
            worker,
            files,
            ways,
            book -> opened(stage, files, errors, book),
            fault -> errors.show(FaultReport.of(fault)));
    Scene scene =
        new Scene(
            new WelcomeView(words, welcome, (file, back) -> backups(file, errors, back)),
            WIDTH,
            HEIGHT);
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

  private BackupsViewModel backups(Path file, ErrorWindow errors, Consumer<Path> back) {
    return new BackupsViewModel(
        file,
        new SqliteCare(),
        words,
        clock,
        worker,
        fault -> errors.show(FaultReport.of(fault)),
        back);
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
    Places all =
        new Places(session, look, found.unit(), copy -> goBack(stage, files, errors, copy));
    backUpOnSchedule(found.book(), errors);
    places = all;
    Shell shell = new Shell(words, look, all.entries());
    all.beside(shell);
    shell.bookName(found.name());
    shell.find(new FindField(words, new FindViewModel(session)));
    shell.steps(new StepsBar(words, new StepsViewModel(session)));
    session.wishProperty().addListener((from, old, now) -> go(shell, now));
    stage.setTitle(words.say("desk.start.title-of", found.name()));
    stage.getScene().setRoot(shell);
    rehearse(errors);
    if (wentBack) {
      wentBack = false;
      all.wentBack();
      session.wish(Wish.show("settings"));
    } else if (found.newest() == null) {
      session.wish(Wish.show("term"));
    }
  }

  /** While the first place is looked at, what others are shown with is made ready. */
  private void rehearse(ErrorWindow errors) {
    worker.run(
        progress -> {
          Rehearsal.play(words);
          return words;
        },
        done -> {},
        fault -> errors.show(FaultReport.of(fault)));
  }

  /** A copy every 20 minutes, if there is anything new; saving goes on meanwhile. */
  private void backUpOnSchedule(Book book, ErrorWindow errors) {
    schedule.stop();
    BackUpBook act = new BackUpBook(new SqliteCare(), clock);
    schedule
        .getKeyFrames()
        .setAll(
            new KeyFrame(
                BACKUP_EVERY,
                due ->
                    worker.run(
                        progress ->
                            act.isDue(book.file())
                                ? act.now(book.file(), BookCopy.Why.ROUTINE, null).problems()
                                : List.<Problem>of(),
                        this::tell,
                        fault -> errors.show(FaultReport.of(fault)))));
    schedule.setCycleCount(Animation.INDEFINITE);
    schedule.playFromStart();
  }

  /** What keeps a backup from being made stands in the title, where it bars no work. */
  private void tell(List<Problem> problems) {
    Stage shown = window;
    if (shown != null && !problems.isEmpty()) {
      shown.setTitle(words.say("desk.start.title-warns", words.sayAtField(problems.get(0))));
    }
  }

  private void goBack(Stage stage, PickFile files, ErrorWindow errors, Path copy) {
    Book last = open;
    Places shown = places;
    if (last == null || shown == null) {
      return;
    }
    schedule.stop();
    shown.rest();
    Path file = last.file();
    open = null;
    places = null;
    worker.run(
        progress -> {
          last.close();
          Answer<Path> gone = new RestoreBackup(new SqliteCare(), clock).to(file, copy);
          Answer<Book> again = new SqliteFiles().open(file, clock);
          return new WentBack(gone, again);
        },
        went -> {
          wentBack = went.gone().isGood();
          if (went.again().isGood()) {
            opened(stage, files, errors, went.again().value());
          }
          tell(went.gone().problems());
          tell(went.again().problems());
        },
        fault -> errors.show(FaultReport.of(fault)));
  }

  private record WentBack(Answer<Path> gone, Answer<Book> again) {}

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
    schedule.stop();
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
