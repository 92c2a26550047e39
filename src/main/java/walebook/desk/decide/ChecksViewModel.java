package walebook.desk.decide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.decide.AllCalculations;
import walebook.act.decide.CheckGroup;
import walebook.quantity.Unit;
import walebook.tables.SharedTables;
import walebook.words.Words;
import walebook.working.Calculation;

/** The list of checks with its search, and the one that is open. */
public final class ChecksViewModel {
  private final Words words;
  private final Unit lengths;
  private final Map<CheckGroup, List<Calculation>> all;
  private final Map<String, CheckViewModel> begun = new HashMap<>();
  private final StringProperty search = new SimpleStringProperty(this, "search", "");
  private final ObservableList<Group> groups = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<@Nullable CheckViewModel> open =
      new ReadOnlyObjectWrapper<>(this, "open");

  /** Checks under one heading. */
  public record Group(String title, List<Line> lines) {
    public Group {
      lines = List.copyOf(lines);
    }
  }

  /** One check of the list. */
  public record Line(String name, String title) {}

  /**
   * The list, whole.
   *
   * @param lengths what a length without a unit means
   */
  public ChecksViewModel(SharedTables tables, Words words, Unit lengths) {
    this.words = words;
    this.lengths = lengths;
    this.all = AllCalculations.grouped(tables);
    search.addListener((from, old, now) -> find());
    find();
  }

  /** Words of which each must be found in a check's title, name or heading. */
  public StringProperty searchProperty() {
    return search;
  }

  /** What the search leaves, headings without checks left out. */
  public ObservableList<Group> groups() {
    return groups;
  }

  /** The check that is open; null while the list is. */
  public ReadOnlyObjectProperty<@Nullable CheckViewModel> openProperty() {
    return open.getReadOnlyProperty();
  }

  /** Opens a check; one that was begun is as it was left. */
  public void open(String name) {
    open.set(begun.computeIfAbsent(name, this::begin));
  }

  /** Opens the first check that the search leaves, if any. */
  public void openFirst() {
    if (!groups.isEmpty()) {
      open(groups.get(0).lines().get(0).name());
    }
  }

  /** Back to the list. */
  public void close() {
    open.set(null);
  }

  private CheckViewModel begin(String name) {
    return all.values().stream()
        .flatMap(List::stream)
        .filter(each -> each.name().equals(name))
        .findFirst()
        .map(each -> new CheckViewModel(each, words, lengths))
        .orElseThrow(() -> new IllegalArgumentException("no check is called " + name));
  }

  private void find() {
    List<String> wanted = List.of(search.get().toLowerCase(Locale.ROOT).strip().split("\\s+"));
    List<Group> found = new ArrayList<>();
    all.forEach(
        (group, calculations) -> {
          String heading = words.say(group.sayKey());
          List<Line> lines =
              calculations.stream()
                  .map(each -> new Line(each.name(), words.say(each.says())))
                  .filter(line -> matches(heading, line, wanted))
                  .toList();
          if (!lines.isEmpty()) {
            found.add(new Group(heading, lines));
          }
        });
    groups.setAll(found);
  }

  private static boolean matches(String heading, Line line, List<String> wanted) {
    String text = String.join(" ", heading, line.title(), line.name()).toLowerCase(Locale.ROOT);
    return wanted.stream().allMatch(text::contains);
  }
}
