package walebook.desk.term;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.privacy.CopiesOfName;
import walebook.act.privacy.TakeOutStudent;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.problem.Answer;
import walebook.record.Mention;
import walebook.record.Student;
import walebook.words.Words;

/**
 * Taking a student out: the first press shows what there is, the second does it. Copies of the book
 * that hold the name are listed then, and deleted only when that is asked for.
 */
public final class PrivacyViewModel {
  private final Session session;
  private final Words words;
  private final TakeOutStudent act;
  private final Runnable gone;
  private final ObjectProperty<TakeOutStudent.How> how =
      new SimpleObjectProperty<>(this, "how", TakeOutStudent.How.ANONYMOUS);
  private final BooleanProperty shown = new SimpleBooleanProperty(this, "shown");
  private final ReadOnlyBooleanWrapper asked = new ReadOnlyBooleanWrapper(this, "asked");
  private final ObservableList<String> lines = FXCollections.observableArrayList();
  private final ObservableList<Path> copies = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);
  private @Nullable Student student;

  private record Seen(TakeOutStudent.Look look, List<Path> copies) {}

  /** What was asked, of whom. */
  private record Asked(Student of, TakeOutStudent.How how) {}

  private record Done(Asked asked, Answer<String> answer, List<Path> copies) {}

  /**
   * Makes it.
   *
   * @param gone run when a student was taken out
   */
  public PrivacyViewModel(Session session, Runnable gone) {
    this.session = session;
    this.words = session.words();
    this.act = new TakeOutStudent(session.book());
    this.gone = gone;
    how.addListener((from, old, now) -> forget());
    session.namesHiddenProperty().addListener((from, old, now) -> forget());
    session.studentProperty().addListener((from, old, now) -> begin());
    session.changesProperty().addListener((from, old, now) -> notice.set(Notice.NONE));
  }

  /** Whose card is open, or null; what was asked about another is forgotten. */
  public void of(@Nullable Student whose) {
    student = whose;
    begin();
  }

  /** As a card is met: folded, nothing asked, the mildest way chosen. */
  private void begin() {
    shown.set(false);
    how.set(TakeOutStudent.How.ANONYMOUS);
    forget();
  }

  private void forget() {
    asked.set(false);
    lines.clear();
  }

  /** Whether this part is unfolded; it folds when another card or another student comes. */
  public BooleanProperty shownProperty() {
    return shown;
  }

  public ObjectProperty<TakeOutStudent.How> howProperty() {
    return how;
  }

  /** True once it was asked for and not yet confirmed. */
  public ReadOnlyBooleanProperty askedProperty() {
    return asked.getReadOnlyProperty();
  }

  /** What there is of the student, and where else the name may be, in words. */
  public ObservableList<String> lines() {
    return lines;
  }

  /** Copies of the book that hold the name of who was taken out last. */
  public ObservableList<Path> copies() {
    return copies;
  }

  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** Shows what there is at the first call, does it at the second. */
  public void take() {
    Student whose = student;
    if (whose == null) {
      return;
    }
    Asked now = new Asked(whose, how.get());
    if (!asked.get()) {
      session.run(progress -> look(whose), seen -> show(now, seen));
      return;
    }
    forget();
    session.run(progress -> new Done(now, act.take(whose, now.how()), copies(whose)), this::done);
  }

  private Seen look(Student whose) throws IOException {
    return new Seen(act.look(whose), copies(whose));
  }

  private List<Path> copies(Student whose) throws IOException {
    return CopiesOfName.in(session.book().file(), whose.name());
  }

  private void show(Asked then, Seen seen) {
    if (!then.of().equals(student) || then.how() != how.get()) {
      return;
    }
    List<String> all = new ArrayList<>();
    all.add(
        words.say(
            switch (how.get()) {
              case ANONYMOUS -> "desk.term.privacy.all-stays";
              case ERASE_KEEP_PIECES -> "desk.term.privacy.pieces-stay";
              case ERASE_ALL -> "desk.term.privacy.all-goes";
            },
            who()));
    new TreeMap<>(seen.look().rows())
        .forEach(
            (table, count) -> all.add(words.say("desk.term.privacy.rows", called(table), count)));
    for (Mention each : seen.look().mentions()) {
      all.add(
          words.say(
              each.whole() ? "desk.term.privacy.named" : "desk.term.privacy.perhaps", each.text()));
    }
    if (!seen.copies().isEmpty()) {
      all.add(words.say("desk.term.privacy.in-copies", seen.copies().size()));
    }
    all.add(words.say("desk.term.privacy.elsewhere"));
    lines.setAll(all);
    asked.set(true);
  }

  /** Whose card is open, by code while names are hidden; empty where none is. */
  public String who() {
    Student whose = student;
    if (whose == null) {
      return "";
    }
    return session.namesHiddenProperty().get() ? whose.alias() : whose.name();
  }

  private String called(String table) {
    String key = "desk.common.table." + table.replace('_', '-');
    return words.has(key) ? words.say(key) : table.replace('_', ' ');
  }

  private void done(Done done) {
    if (!done.answer().isGood()) {
      say(words.say(done.answer().problems().get(0)));
      return;
    }
    copies.setAll(done.copies());
    Student whose = done.asked().of();
    Student here = session.studentProperty().get();
    if (here != null && here.id().equals(whose.id())) {
      session.studentProperty().set(null);
    }
    if (student != null && student.id().equals(whose.id())) {
      gone.run();
    }
    session.changed();
    say(
        words.say(
            done.asked().how() == TakeOutStudent.How.ERASE_ALL
                ? "desk.term.privacy.done-all"
                : "desk.term.privacy.done",
            done.answer().value()));
  }

  /** Deletes the copies that hold the name. */
  public void deleteCopies() {
    List<Path> chosen = List.copyOf(copies);
    session.run(
        progress -> {
          CopiesOfName.delete(chosen);
          return chosen.size();
        },
        count -> {
          copies.clear();
          say(words.say("desk.term.privacy.copies-deleted", count));
        });
  }

  private void say(String sentence) {
    notice.set(new Notice(sentence, null));
  }
}
