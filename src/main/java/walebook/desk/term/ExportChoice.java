package walebook.desk.term;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import walebook.record.Lesson;
import walebook.record.Student;

/** What of the class goes out: everything until something is taken out. */
public final class ExportChoice {
  private final ObservableList<Item<UUID>> lessons = FXCollections.observableArrayList();
  private final ObservableList<Item<UUID>> students = FXCollections.observableArrayList();
  private final ObservableList<Item<String>> columns = FXCollections.observableArrayList();
  private final Runnable changed;
  private boolean several;

  /** One thing that goes out or stays. */
  public static final class Item<K> {
    private final K key;
    private final String title;
    private final BooleanProperty taken = new SimpleBooleanProperty(this, "taken", true);

    Item(K key, String title, Runnable changed) {
      this.key = key;
      this.title = title;
      taken.addListener((from, old, now) -> changed.run());
    }

    public K key() {
      return key;
    }

    public String title() {
      return title;
    }

    public BooleanProperty takenProperty() {
      return taken;
    }
  }

  ExportChoice(Map<String, String> columnTitles, Runnable changed) {
    this.changed = changed;
    columnTitles.forEach((key, title) -> columns.add(new Item<>(key, title, this::changed)));
  }

  private void changed() {
    if (!several) {
      changed.run();
    }
  }

  /** Takes all of one kind, or none; heard of once. */
  <K> void take(List<Item<K>> items, boolean taken) {
    several = true;
    items.forEach(each -> each.takenProperty().set(taken));
    several = false;
    changed.run();
  }

  /** Offers another class's lessons and students; those left out before stay out. */
  void offer(List<Lesson> ofClass, List<Student> inClass, boolean names) {
    Set<UUID> out =
        lessons.stream()
            .filter(each -> !each.takenProperty().get())
            .map(Item::key)
            .collect(Collectors.toSet());
    students.stream().filter(each -> !each.takenProperty().get()).map(Item::key).forEach(out::add);
    lessons.setAll(
        ofClass.stream().map(each -> new Item<>(each.id(), each.title(), this::changed)).toList());
    students.setAll(
        inClass.stream()
            .map(each -> new Item<>(each.id(), names ? each.name() : each.alias(), this::changed))
            .toList());
    lessons.forEach(each -> each.takenProperty().set(!out.contains(each.key())));
    students.forEach(each -> each.takenProperty().set(!out.contains(each.key())));
  }

  public ObservableList<Item<UUID>> lessons() {
    return lessons;
  }

  public ObservableList<Item<UUID>> students() {
    return students;
  }

  public ObservableList<Item<String>> columns() {
    return columns;
  }

  /** Keys of those that go out; empty when all do. */
  static <K> Set<K> taken(List<Item<K>> items) {
    boolean all = items.stream().allMatch(each -> each.takenProperty().get());
    return all
        ? Set.of()
        : items.stream()
            .filter(each -> each.takenProperty().get())
            .map(Item::key)
            .collect(Collectors.toSet());
  }

  /** True when everything of one kind was taken out, so that nothing would be left. */
  static <K> boolean isNone(List<Item<K>> items) {
    return !items.isEmpty() && items.stream().noneMatch(each -> each.takenProperty().get());
  }
}
