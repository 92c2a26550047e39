package walebook.desk.classroom;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.CompareFair;
import walebook.act.classroom.SettingWords;
import walebook.compare.CompareBySetting;
import walebook.compare.Factor;
import walebook.compare.FactorTables;
import walebook.compare.FairComparison;
import walebook.compare.FairFindings;
import walebook.compare.FairQuestion;
import walebook.compare.Outcome;
import walebook.desk.common.FormFields;
import walebook.desk.common.Session;
import walebook.desk.common.Task;
import walebook.desk.common.Wish;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.ReadNumber;
import walebook.record.SchoolClass;
import walebook.words.Words;

/** Settings compared with allowance for who sewed what. */
public final class FairViewModel {
  private final Session session;
  private final Narrowing narrowing;
  private final Asking asking;
  private final SettingWords settings;
  private final ObjectProperty<Outcome> outcome =
      new SimpleObjectProperty<>(this, "outcome", Outcome.HELD);
  private final BooleanProperty pValues = new SimpleBooleanProperty(this, "pValues");
  private final BooleanProperty withinMachine = new SimpleBooleanProperty(this, "withinMachine");
  private final Set<Factor> factors = new LinkedHashSet<>(CompareBySetting.USUAL);
  private final FormFields form = new FormFields(this::again, "matters");
  private final ReadOnlyObjectWrapper<@Nullable Shown> shown = new ReadOnlyObjectWrapper<>();
  private @Nullable Task reading;

  /**
   * What was found.
   *
   * @param says the sentences, most important first
   * @param tables factor by factor
   */
  record Shown(CompareFair.Found found, FactorTables tables, List<String> says) {}

  private record Read(CompareFair.Found found, FactorTables tables) {}

  public FairViewModel(Session session, Narrowing narrowing) {
    this.session = session;
    this.narrowing = narrowing;
    this.settings = new SettingWords(session.words());
    asking = new Asking(session, narrowing, this::ask);
    outcome.addListener((from, old, now) -> again());
    withinMachine.addListener((from, old, now) -> again());
  }

  /** Told when the part comes into sight or leaves it. */
  void shown(boolean on) {
    asking.shown(on);
  }

  Narrowing narrowing() {
    return narrowing;
  }

  ObjectProperty<Outcome> outcomeProperty() {
    return outcome;
  }

  /** True when p-values are asked for. */
  BooleanProperty pValuesProperty() {
    return pValues;
  }

  /** True when only pieces of one student on one machine are compared with each other. */
  BooleanProperty withinMachineProperty() {
    return withinMachine;
  }

  /** The difference that matters, as typed; empty for none. */
  FormFields.Field matters() {
    return form.field("matters");
  }

  boolean tellsApart(Factor factor) {
    return factors.contains(factor);
  }

  void tellApart(Factor factor, boolean on) {
    if (on ? factors.add(factor) : factors.remove(factor)) {
      again();
    }
  }

  ReadOnlyObjectProperty<@Nullable Shown> shownProperty() {
    return shown.getReadOnlyProperty();
  }

  /** Shows a piece in its own place. */
  void openPiece(UUID pieceId) {
    session.wish(new Wish("pieces", Wish.What.OPEN, pieceId));
  }

  /** Asks the place for test pieces to log one. */
  void logFirst() {
    session.wish(new Wish("pieces", Wish.What.LOG_OWN, null));
  }

  SettingWords settings() {
    return settings;
  }

  Words words() {
    return session.words();
  }

  private void again() {
    asking.again();
  }

  private void ask() {
    FairQuestion question = question();
    SchoolClass of = session.schoolClassProperty().get();
    if (question == null) {
      return;
    }
    if (reading != null) {
      reading.cancel();
    }
    if (of == null) {
      shown.set(null);
      return;
    }
    CompareFair.Which which = narrowing.which(of, session.namesHiddenProperty().get());
    reading =
        session.run(
            progress -> {
              CompareFair act = new CompareFair(session.book());
              return new Read(act.compare(which, question), act.tables(which, question));
            },
            this::show);
  }

  /** The question, or null while the difference that matters can't be read. */
  private @Nullable FairQuestion question() {
    List<Factor> inOrder = Arrays.stream(Factor.values()).filter(factors::contains).toList();
    FairQuestion question =
        FairQuestion.of(outcome.get(), inOrder).withinMachines(withinMachine.get());
    String typed = form.text("matters").strip();
    if (typed.isEmpty()) {
      return question;
    }
    Answer<Double> read = ReadNumber.plain(typed, Place.field("matters"));
    if (!read.isGood()) {
      form.show(read.problems());
      return null;
    }
    if (!(read.value() > 0)) {
      form.show(List.of(Problem.refuse("number.too-small", Place.field("matters"), typed, "0.1")));
      return null;
    }
    return question.mattering(read.value());
  }

  private void show(Read read) {
    FairComparison found = read.found().comparison();
    shown.set(
        new Shown(
            read.found(),
            read.tables(),
            FairFindings.of(found, levels -> settings.setting(found.factors(), levels)).stream()
                .map(words()::say)
                .toList()));
  }
}
