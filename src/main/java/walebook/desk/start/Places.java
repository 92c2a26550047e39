package walebook.desk.start;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import org.jspecify.annotations.Nullable;
import walebook.book.open.SqliteCare;
import walebook.book.open.SqliteFiles;
import walebook.desk.classroom.ClassroomView;
import walebook.desk.cloths.ClothsView;
import walebook.desk.common.BackupsViewModel;
import walebook.desk.common.Session;
import walebook.desk.decide.DecideView;
import walebook.desk.lessons.LessonsView;
import walebook.desk.look.Look;
import walebook.desk.pieces.PiecesView;
import walebook.desk.pieces.PiecesViewModel;
import walebook.desk.settings.SettingsView;
import walebook.desk.shell.PlaceEntry;
import walebook.desk.shell.Shell;
import walebook.desk.term.TermView;
import walebook.desk.today.TodayView;
import walebook.desk.today.TodayViewModel;
import walebook.desk.typing.TypeInView;
import walebook.desk.typing.TypeInViewModel;
import walebook.quantity.Unit;
import walebook.words.Words;

/** The window's places over one session, in the order they are listed. */
final class Places {
  private static final List<KeyCode> DIGITS =
      List.of(
          KeyCode.DIGIT1,
          KeyCode.DIGIT2,
          KeyCode.DIGIT3,
          KeyCode.DIGIT4,
          KeyCode.DIGIT5,
          KeyCode.DIGIT6,
          KeyCode.DIGIT7,
          KeyCode.DIGIT8);

  private final Session session;
  private final Look look;
  private final Words words;
  private final Consumer<Path> goBack;
  private final Unit lengthUnit;
  private final PiecesViewModel pieces;
  private final TypeInViewModel typing;
  private @Nullable ClothsView cloths;
  private boolean wentBack;
  private @Nullable LessonsView lessons;
  private @Nullable DecideView decide;
  private @Nullable TermView term;

  /**
   * Makes the places.
   *
   * @param lengthUnit what a length without a unit means in this book
   * @param goBack closes the book and opens it again as a backup holds it
   */
  Places(Session session, Look look, Unit lengthUnit, Consumer<Path> goBack) {
    this.goBack = goBack;
    this.session = session;
    this.look = look;
    this.words = session.words();
    this.lengthUnit = lengthUnit;
    // Made now, not when first shown: it has to hear what other places wish of it.
    this.pieces = new PiecesViewModel(session, lengthUnit);
    this.typing = new TypeInViewModel(session);
  }

  /** Lists them; each is built when it is first shown. */
  List<PlaceEntry> entries() {
    return List.of(
        entry(1, "today", "desk.start.place.today", this::today),
        entry(2, "pieces", "desk.start.place.pieces", () -> new PiecesView(words, pieces)),
        entry(3, "cloths", "desk.start.place.cloths", this::cloths),
        entry(4, "decide", "desk.start.place.decide", this::decide),
        entry(5, "lessons", "desk.start.place.lessons", this::lessons),
        entry(6, "class", "desk.start.place.class", this::classroom),
        entry(7, "term", "desk.start.place.term", this::term),
        entry(8, "settings", "desk.start.place.settings", this::settings));
  }

  /** Adds the places that others lead to. */
  void beside(Shell shell) {
    shell.beside(
        "lessons",
        new PlaceEntry(
            TypeInViewModel.PLACE,
            words.say("desk.start.place.typing"),
            new KeyCodeCombination(KeyCode.DIGIT9, KeyCombination.SHORTCUT_DOWN),
            () -> new TypeInView(session, typing)));
  }

  /** The settings say that the book was gone back with. */
  void wentBack() {
    wentBack = true;
  }

  /** Keeps what is being typed; called before the book is closed. */
  void rest() {
    pieces.rest();
    typing.rest();
    if (cloths != null) {
      cloths.rest();
    }
    if (lessons != null) {
      lessons.rest();
    }
    if (term != null) {
      term.rest();
    }
    DecideView shown = decide;
    if (shown != null) {
      shown.rest();
    }
  }

  private PlaceEntry entry(int digit, String key, String title, Supplier<? extends Node> view) {
    return new PlaceEntry(
        key,
        words.say(title),
        new KeyCodeCombination(DIGITS.get(digit - 1), KeyCombination.SHORTCUT_DOWN),
        view);
  }

  private Node decide() {
    DecideView view = new DecideView(session, look, lengthUnit);
    decide = view;
    return view;
  }

  private Node settings() {
    BackupsViewModel backups =
        new BackupsViewModel(
            session.book().file(),
            new SqliteCare(),
            words,
            session.clock(),
            session.background(),
            session::unexpected,
            goBack);
    if (wentBack) {
      backups.wentBack();
    }
    return new SettingsView(session, backups);
  }

  private Node today() {
    return new TodayView(words, new TodayViewModel(session));
  }

  private Node cloths() {
    ClothsView made = new ClothsView(session);
    cloths = made;
    return made;
  }

  private Node lessons() {
    LessonsView made = new LessonsView(session, look);
    lessons = made;
    return made;
  }

  private Node classroom() {
    return new ClassroomView(session, look);
  }

  private Node term() {
    TermView made = new TermView(session, new SqliteFiles());
    term = made;
    return made;
  }
}
