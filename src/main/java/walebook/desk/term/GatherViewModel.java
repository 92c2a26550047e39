package walebook.desk.term;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.gather.DecideConflicts;
import walebook.act.gather.GatherBooks;
import walebook.act.gather.GiveStarterBooks;
import walebook.act.gather.SayConflict;
import walebook.act.gather.SayGathered;
import walebook.book.BookFiles;
import walebook.book.gather.Choice;
import walebook.book.gather.Conflict;
import walebook.book.gather.FromBook;
import walebook.desk.common.PickFile;
import walebook.desk.common.Session;
import walebook.desk.common.Task;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.record.SchoolClass;

/** Gathering students' books: what was picked, what would come, what is to be decided. */
public final class GatherViewModel {
  /** Stopping and the last step exclude each other, so that what is said of it is true. */
  private enum Phase {
    GATHERING,
    STOPPED,
    LAST_STEP
  }

  private final Session session;
  private final GatherBooks act;
  private final GiveStarterBooks give;
  private final DecideConflicts decide;
  private final SayConflict say;
  private final ObservableList<Path> picked = FXCollections.observableArrayList();
  private final ObservableList<FromBook> books = FXCollections.observableArrayList();
  private final ObservableList<Conflict> conflicts = FXCollections.observableArrayList();
  private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper(this, "working");
  private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper(this, "share", 0);
  private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper(this, "says", "");
  private final ReadOnlyBooleanWrapper ready = new ReadOnlyBooleanWrapper(this, "ready");
  private final BooleanProperty byName = new SimpleBooleanProperty(this, "byName", false);
  private @Nullable Task task;
  private AtomicReference<Phase> phase = new AtomicReference<>(Phase.GATHERING);

  public GatherViewModel(Session session, BookFiles files) {
    this.session = session;
    this.act = new GatherBooks(session.book(), files, session.clock());
    this.give = new GiveStarterBooks(session.book(), files, session.clock());
    this.decide = new DecideConflicts(session.book());
    this.say = new SayConflict(session.words(), session.tables());
    ready.bind(Bindings.isNotEmpty(picked).and(working.not()));
    session.changesProperty().addListener((from, old, now) -> changed());
  }

  private void changed() {
    if (!working.get()) {
      says.set("");
    }
    read();
  }

  /** The books and folders to gather from. */
  public ObservableList<Path> picked() {
    return picked;
  }

  /** What came of each book, or would come. */
  public ObservableList<FromBook> books() {
    return books;
  }

  /** What waits for a person. */
  public ObservableList<Conflict> conflicts() {
    return conflicts;
  }

  public ReadOnlyBooleanProperty workingProperty() {
    return working.getReadOnlyProperty();
  }

  /** True when something is picked and nothing is being gathered. */
  public ReadOnlyBooleanProperty readyProperty() {
    return ready.getReadOnlyProperty();
  }

  /** How far the gathering is, 0 to 1. */
  public ReadOnlyDoubleProperty shareProperty() {
    return share.getReadOnlyProperty();
  }

  public ReadOnlyStringProperty saysProperty() {
    return says.getReadOnlyProperty();
  }

  /** True to call starter books by the students' names, false by their codes. */
  public BooleanProperty byNameProperty() {
    return byName;
  }

  /** Asks for a folder of books, or for one book. */
  public void pick(PickFile.Kind kind) {
    Path file = session.files().open(kind);
    if (file != null && !picked.contains(file)) {
      picked.add(file);
      books.clear();
      says.set("");
    }
  }

  public void clear() {
    picked.clear();
    books.clear();
    says.set("");
  }

  /** Says what would come and changes nothing. */
  public void look() {
    run(false);
  }

  /** Gathers all that was picked, or nothing when it is stopped. */
  public void gather() {
    run(true);
  }

  private void run(boolean really) {
    if (!ready.get()) {
      return;
    }
    List<Path> files = List.copyOf(picked);
    working.set(true);
    AtomicReference<Phase> now = new AtomicReference<>(Phase.GATHERING);
    phase = now;
    says.set(session.words().say("desk.term.gather.working"));
    Task started =
        session
            .background()
            .run(
                progress ->
                    act.gather(
                        files,
                        really,
                        session.by(),
                        (done, of) -> {
                          progress.at(done);
                          if (done >= 1) {
                            now.compareAndSet(Phase.GATHERING, Phase.LAST_STEP);
                          }
                          if (now.get() == Phase.STOPPED) {
                            throw new CancellationException();
                          }
                        }),
                gathered -> came(gathered, really),
                fault -> {
                  ended("");
                  session.unexpected(fault);
                });
    task = started;
    share.bind(started.shareProperty());
  }

  private void came(GatherBooks.Gathered gathered, boolean really) {
    books.setAll(gathered.books());
    if (really) {
      session.changed();
    }
    Path backup = gathered.backup();
    ended(
        !really
            ? session.words().say("desk.term.gather.looked")
            : backup == null
                ? session.words().say("desk.term.gather.nothing")
                : session.words().say("desk.term.gather.done", backup));
  }

  private void ended(String sentence) {
    working.set(false);
    share.unbind();
    share.set(0);
    task = null;
    says.set(sentence);
  }

  /** Stops it; the book stays as it was. Once all is in, it is too late and nothing happens. */
  public void cancel() {
    if (task != null && phase.compareAndSet(Phase.GATHERING, Phase.STOPPED)) {
      task.cancel();
      ended(session.words().say("desk.term.gather.cancelled"));
    }
  }

  /** Reads what waits to be decided. */
  public void read() {
    session.run(progress -> decide.open(), conflicts::setAll);
  }

  /** Carries out what was pressed, and says so: the card is gone from then on. */
  public void decide(Conflict conflict, Choice choice) {
    session.run(
        progress ->
            decide
                .decide(conflict.id(), choice, session.by())
                .map(done -> decided(conflict, choice, decide.open().size())),
        answer -> {
          session.changed();
          says.set(answer.isGood() ? answer.value() : problems(answer.problems()));
        });
  }

  private String decided(Conflict conflict, Choice choice, int left) {
    return session
        .words()
        .say("desk.term.gather.decided", title(conflict), chosen(conflict, choice), left);
  }

  /** What choosing a side means, as its button says. */
  public String chosen(Conflict conflict, Choice choice) {
    boolean sameName = conflict.why() == Conflict.Why.SAME_NAME;
    return session
        .words()
        .say(
            switch (choice) {
              case MINE -> sameName ? "desk.term.gather.one" : "desk.term.gather.keep";
              case THEIRS -> sameName ? "desk.term.gather.two" : "desk.term.gather.take";
            });
  }

  /** Asks for a folder and writes each student of the class a book of their own. */
  public void giveOut() {
    SchoolClass of = session.schoolClassProperty().get();
    Path folder = of == null ? null : session.files().open(PickFile.Kind.FOLDER);
    if (of == null || folder == null) {
      return;
    }
    boolean names = byName.get();
    session.run(progress -> give.give(of, folder, names, false), answer -> given(answer, folder));
  }

  private void given(Answer<List<Path>> answer, Path folder) {
    says.set(
        answer.isGood()
            ? session.words().say("desk.term.gather.given", answer.value().size(), folder)
            : problems(answer.problems()));
  }

  /** What came of one book in a sentence. */
  public String sentence(FromBook from) {
    Problem problem = from.problem();
    return problem != null
        ? session.words().say(problem)
        : session
                .words()
                .say(
                    "desk.term.gather.from",
                    String.valueOf(from.file().getFileName()),
                    new SayGathered(session.words()).counts(from))
            + leftOut(from.gone());
  }

  private String leftOut(int gone) {
    return gone == 0 ? "" : " " + session.words().say("desk.term.gather.left-out", gone);
  }

  /** Why a person is asked, in a sentence. */
  public String why(Conflict conflict) {
    return session
        .words()
        .say(
            switch (conflict.why()) {
              case BOTH_CHANGED -> "desk.term.gather.both-changed";
              case REMOVED_HERE -> "desk.term.gather.removed-here";
              case TWIN -> "desk.term.gather.twin";
              case SAME_NAME -> "desk.term.gather.same-name";
            },
            title(conflict),
            conflict.fileName());
  }

  /** What it is about, at the beginning of a sentence. */
  private String title(Conflict conflict) {
    String title = say.title(conflict);
    return title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1);
  }

  /** What a field that differs is called by people. */
  public String field(Conflict conflict, Conflict.Field field) {
    return say.name(conflict, field);
  }

  /** A field as this book has it. */
  public String mine(Conflict conflict, Conflict.Field field) {
    return say.side(field.mine(), conflict, field);
  }

  /** A field as the other book has it. */
  public String theirs(Conflict conflict, Conflict.Field field) {
    return say.side(field.theirs(), conflict, field);
  }

  private String problems(List<Problem> problems) {
    return problems.stream().map(session.words()::say).collect(Collectors.joining("\n"));
  }
}
