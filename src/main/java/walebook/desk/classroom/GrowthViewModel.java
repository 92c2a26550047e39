package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.AskGrowth;
import walebook.act.classroom.CompareFair;
import walebook.book.Book;
import walebook.compare.known.Growth;
import walebook.compare.known.GrowthFindings;
import walebook.desk.common.Wish;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;
import walebook.quantity.Show;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;
import walebook.words.Words;

/** How one student grows over classes and terms. */
public final class GrowthViewModel extends AskingModel<GrowthViewModel.Grown> {
  private static final double CONFIDENCE = 0.95;

  private final ObservableList<Choice> students = FXCollections.observableArrayList();
  private final ObjectProperty<@Nullable Choice> student =
      new SimpleObjectProperty<>(this, "student");
  private boolean filling;

  /**
   * How one student grows.
   *
   * @param names those to choose from
   * @param plot each try a mark at the number of pieces it took; null without tries
   * @param table the numbers, the header first
   */
  record Grown(
      List<Choice> names, List<String> says, @Nullable DotPlot plot, List<List<String>> table) {}

  public GrowthViewModel(FiltersViewModel filters) {
    super(filters);
    foundProperty().addListener((from, old, now) -> names(now));
    student.addListener(
        (from, old, now) -> {
          if (!filling) {
            asking().again();
          }
        });
  }

  @Override
  Asking.Work<Grown> ask(CompareFair.Which which) {
    Choice who = student.get();
    UUID chosen = who == null ? null : who.id();
    Book book = session().book();
    Words words = words();
    return progress -> grown(book, which, chosen, words);
  }

  ObservableList<Choice> students() {
    return students;
  }

  /** The student who is looked at, or null while nobody is chosen. */
  ObjectProperty<@Nullable Choice> studentProperty() {
    return student;
  }

  /** Asks the term record for students. */
  void enrol() {
    session().wish(Wish.show("term"));
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

  private static Grown grown(
      Book book, CompareFair.Which which, @Nullable UUID student, Words words) {
    List<Choice> names =
        book.enrolments().everyoneOf(which.classIds().get(0)).stream()
            .map(each -> new Choice(each.id(), which.namesHidden() ? each.alias() : each.name()))
            .toList();
    // Whoever was chosen in another class is not talked of in this one.
    if (student == null || names.stream().noneMatch(each -> student.equals(each.id()))) {
      return new Grown(names, List.of(), null, List.of());
    }
    Growth growth = new AskGrowth(book).ask(student);
    List<String> says = GrowthFindings.of(growth).stream().map(words::say).toList();
    int most = GrowthDots.most(growth);
    List<DotRow> rows = new ArrayList<>();
    List<List<String>> table = new ArrayList<>();
    table.add(
        List.of(
            words.say("desk.class.terms.col.term"),
            words.say("desk.class.growth.tries"),
            words.say("desk.class.growth.pieces"),
            words.say("desk.class.growth.first"),
            words.say("desk.class.col.from"),
            words.say("desk.class.col.to"),
            words.say("desk.class.growth.half")));
    for (Growth.Period period : growth.periods()) {
      rows.add(
          new DotRow(
              period.name(), GrowthDots.of(period.tries(), most), period.half(), null, null, 0));
      table.add(line(period));
    }
    DotPlot plot =
        rows.isEmpty()
            ? null
            : new DotPlot(words.say("desk.class.growth.axis"), rows, null, GrowthDots.span(most));
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
        Show.fixed(100 * interval.low(), 0),
        Show.fixed(100 * interval.high(), 0),
        period.half() == null ? "–" : Show.fixed(period.half(), 0));
  }
}
