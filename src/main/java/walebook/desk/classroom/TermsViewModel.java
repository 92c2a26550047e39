package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.AskGrowth;
import walebook.act.classroom.AskKnown;
import walebook.act.classroom.CompareFair;
import walebook.act.classroom.SettingWords;
import walebook.book.Book;
import walebook.compare.FairComparison;
import walebook.compare.FairQuestion;
import walebook.compare.known.Growth;
import walebook.compare.known.GrowthFindings;
import walebook.compare.known.KnownFindings;
import walebook.compare.known.KnownSoFar;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;
import walebook.quantity.Show;
import walebook.record.Cloth;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;
import walebook.words.Words;

/** The same question over all classes and terms of the book, and how one student grows. */
public final class TermsViewModel {
  private static final double CONFIDENCE = 0.95;

  private final FiltersViewModel filters;
  private final Words words;
  private final Asking<Known> known;
  private final Asking<Grown> grown;
  private final ObservableList<Choice> students = FXCollections.observableArrayList();
  private final ObjectProperty<@Nullable Choice> student =
      new SimpleObjectProperty<>(this, "student");
  private boolean filling;

  /**
   * What is known so far.
   *
   * @param plot all classes together, by setting; null when no piece has a value
   */
  record Known(List<String> says, List<Line> lines, @Nullable DotPlot plot) {}

  /** One class of the table. */
  record Line(
      String term,
      String className,
      int pieces,
      int students,
      int setAside,
      String mean,
      String half,
      String held) {}

  /**
   * How one student grows.
   *
   * @param names those to choose from
   * @param plot each try a mark at the number of pieces it took; null without tries
   * @param table the numbers, the header first
   */
  record Grown(
      List<Choice> names, List<String> says, @Nullable DotPlot plot, List<List<String>> table) {}

  public TermsViewModel(FiltersViewModel filters) {
    this.filters = filters;
    this.words = filters.session().words();
    Book book = filters.session().book();
    known =
        new Asking<>(
            filters,
            (in, hidden) -> {
              UUID clothId = filters.which(in.id(), hidden).clothId();
              FairQuestion question = filters.question();
              return () -> known(book, question, clothId, hidden, words);
            });
    grown =
        new Asking<>(
            filters,
            (in, hidden) -> {
              Choice who = student.get();
              CompareFair.Which which = filters.which(in.id(), hidden);
              UUID chosen = who == null ? null : who.id();
              return () -> grown(book, which, chosen, words);
            });
    grown.foundProperty().addListener((from, old, now) -> names(now));
    student.addListener(
        (from, old, now) -> {
          if (!filling) {
            grown.again();
          }
        });
  }

  FiltersViewModel filters() {
    return filters;
  }

  Asking<Known> knownAsking() {
    return known;
  }

  Asking<Grown> grownAsking() {
    return grown;
  }

  ReadOnlyObjectProperty<@Nullable Known> knownProperty() {
    return known.foundProperty();
  }

  ReadOnlyObjectProperty<@Nullable Grown> grownProperty() {
    return grown.foundProperty();
  }

  ObservableList<Choice> students() {
    return students;
  }

  /** The student who is looked at, or null while nobody is chosen. */
  ObjectProperty<@Nullable Choice> studentProperty() {
    return student;
  }

  void shown(boolean now) {
    known.shown(now);
    grown.shown(now);
  }

  private void names(@Nullable Grown now) {
    filling = true;
    Choice was = student.get();
    List<Choice> all = now == null ? List.of() : now.names();
    if (!students.equals(all)) {
      students.setAll(all);
    }
    UUID id = was == null ? null : was.id();
    student.set(
        all.stream().filter(each -> id != null && id.equals(each.id())).findFirst().orElse(null));
    filling = false;
  }

  private static Known known(
      Book book, FairQuestion question, @Nullable UUID clothId, boolean hidden, Words words) {
    Cloth cloth = clothId == null ? null : book.cloths().find(clothId);
    KnownSoFar found =
        new AskKnown(List.of(book))
            .ask(question, cloth == null ? null : cloth.name(), null, hidden);
    FairComparison together = found.together();
    SettingWords settings = new SettingWords(words);
    List<String> says =
        KnownFindings.of(
                found,
                levels -> settings.setting(together.factors(), levels),
                grain -> words.say("act.class.grain." + grain.key()))
            .stream()
            .map(words::say)
            .toList();
    return new Known(
        says,
        found.classes().stream().map(TermsViewModel::line).toList(),
        new FairDrawn(words).plot(together));
  }

  private static Line line(KnownSoFar.ClassLine each) {
    Proportion held = each.held();
    return new Line(
        each.term(),
        each.className(),
        each.pieces(),
        each.students(),
        each.setAside(),
        each.mean() == null ? "–" : FairViewModel.number(each.mean().mean()),
        FairViewModel.number(each.median()),
        held == null ? "–" : held.count() + " / " + held.n());
  }

  private static Grown grown(
      Book book, CompareFair.Which which, @Nullable UUID student, Words words) {
    List<Choice> names =
        book.enrolments().everyoneOf(which.classIds().get(0)).stream()
            .map(each -> new Choice(each.id(), which.namesHidden() ? each.alias() : each.name()))
            .toList();
    if (student == null) {
      return new Grown(names, List.of(), null, List.of());
    }
    Growth growth = new AskGrowth(book).ask(student);
    List<String> says = GrowthFindings.of(growth).stream().map(words::say).toList();
    List<DotRow> rows = new ArrayList<>();
    List<List<String>> table = new ArrayList<>();
    table.add(
        List.of(
            words.say("desk.class.terms.col.term"),
            words.say("desk.class.growth.tries"),
            words.say("desk.class.growth.pieces"),
            words.say("desk.class.growth.first"),
            words.say("desk.class.col.limits"),
            words.say("desk.class.growth.half")));
    for (Growth.Period period : growth.periods()) {
      rows.add(
          new DotRow(
              period.name(),
              period.tries().stream()
                  .map(each -> new DotRow.Dot(each.untilGood(), !each.good()))
                  .toList(),
              period.half(),
              null,
              null,
              0));
      table.add(line(period));
    }
    DotPlot plot =
        rows.isEmpty() ? null : new DotPlot(words.say("desk.class.growth.axis"), rows, null);
    return new Grown(names, says, plot, table);
  }

  private static List<String> line(Growth.Period period) {
    Proportion right = period.firstTimeRight();
    Interval interval = right.wilson(CONFIDENCE);
    return List.of(
        period.name(),
        Integer.toString(period.tries().size()),
        Integer.toString(period.pieces()),
        right.count() + " / " + right.n(),
        Show.fixed(100 * interval.low(), 0) + " … " + Show.fixed(100 * interval.high(), 0),
        period.half() == null ? "–" : Show.fixed(period.half(), 0));
  }
}
