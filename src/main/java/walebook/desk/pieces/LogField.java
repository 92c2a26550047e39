package walebook.desk.pieces;

import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceField;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.ReadMinutes;
import walebook.quantity.ReadNumber;
import walebook.quantity.Show;
import walebook.quantity.Unit;

/**
 * One field of the log form: its text as typed, what it can be, and its problem, which is held back
 * until the field is left and goes as soon as it is mended.
 */
public final class LogField {
  /** A thirty-second of an inch has five. */
  private static final int MOST_PLACES = 5;

  private final PieceField field;
  private final String label;
  private final Unit lengthUnit;
  private final StringProperty text = new SimpleStringProperty(this, "text", "");
  private final BooleanProperty asked = new SimpleBooleanProperty(this, "asked", true);
  private final ObservableList<Choice> choices = FXCollections.observableArrayList();
  private final ObjectProperty<@Nullable Choice> chosen =
      new SimpleObjectProperty<>(this, "chosen");
  private final ReadOnlyObjectWrapper<@Nullable Problem> problem =
      new ReadOnlyObjectWrapper<>(this, "problem");
  private final ReadOnlyStringWrapper understood =
      new ReadOnlyStringWrapper(this, "understood", "");
  private final ReadOnlyStringWrapper changed = new ReadOnlyStringWrapper(this, "changed", "");
  private @Nullable Problem found;
  private boolean settled;

  LogField(PieceField field, String label, Unit lengthUnit) {
    this.field = field;
    this.label = label;
    this.lengthUnit = lengthUnit;
    text.addListener(
        (from, old, now) -> {
          chosen.set(choice(now));
          understood.set(understand(now));
        });
    chosen.addListener(
        (from, old, now) -> {
          // Swapping the list of choices empties the control for a moment; the text stays.
          if (now != null && !now.key().equals(text.get())) {
            text.set(now.key());
          }
        });
  }

  public PieceField field() {
    return field;
  }

  /** The label, with its unit. */
  public String label() {
    return label;
  }

  public StringProperty textProperty() {
    return text;
  }

  /** Whether the piece's method, machine and stitch make sense of the field. */
  public BooleanProperty askedProperty() {
    return asked;
  }

  /** What can be chosen; empty for a field that is typed. */
  public ObservableList<Choice> choices() {
    return choices;
  }

  /** The choice that the text stands for. */
  public ObjectProperty<@Nullable Choice> chosenProperty() {
    return chosen;
  }

  /** The problem to be shown at the field, or null. */
  public ReadOnlyObjectProperty<@Nullable Problem> problemProperty() {
    return problem.getReadOnlyProperty();
  }

  /** How a number with a unit or a fraction was understood; empty when the text says so itself. */
  public ReadOnlyStringProperty understoodProperty() {
    return understood.getReadOnlyProperty();
  }

  /** What it was on the piece before, where it is the change; empty otherwise. */
  public ReadOnlyStringProperty changedProperty() {
    return changed.getReadOnlyProperty();
  }

  void changed(String says) {
    changed.set(says);
  }

  /** The field was left: from now on its problem shows. */
  public void leave() {
    settled = settled || !text.get().isBlank();
    show();
  }

  void settle(boolean now) {
    settled = now;
    show();
  }

  void found(@Nullable Problem next) {
    found = next;
    show();
  }

  void offer(List<Choice> next) {
    choices.setAll(next);
    chosen.set(choice(text.get()));
  }

  /** Puts a text in; lengths are turned into the unit of the label. */
  void put(String next) {
    text.set(field.kind() == PieceField.Kind.LENGTH ? inUnit(next) : next);
    settled = false;
    found(null);
  }

  private void show() {
    problem.set(settled ? found : null);
  }

  private @Nullable Choice choice(String key) {
    return choices.stream().filter(each -> each.key().equals(key)).findFirst().orElse(null);
  }

  /** As it stands where no short number of the label's unit is the very same length. */
  private String inUnit(String typed) {
    Double mm = millimetres(typed);
    if (mm == null) {
      return typed;
    }
    String number = Show.upTo(mm / lengthUnit.inBase(), MOST_PLACES);
    return mm.equals(millimetres(number)) ? number : typed;
  }

  private @Nullable Double millimetres(String typed) {
    Answer<Double> read = ReadNumber.length(typed, lengthUnit, Place.field(field.key()));
    return read.isGood() ? read.value() : null;
  }

  private String understand(String typed) {
    if (typed.isBlank() || typed.strip().matches("[0-9]+([.,][0-9]+)?")) {
      return "";
    }
    Place place = Place.field(field.key());
    return switch (field.kind()) {
      case LENGTH -> shown(ReadNumber.length(typed, lengthUnit, place), true);
      case NUMBER, WHOLE -> shown(ReadNumber.plain(typed, place), false);
      case MINUTES -> minutes(ReadMinutes.read(typed, place));
      case CHOICE, TEXT, DATE -> "";
    };
  }

  private static String minutes(Answer<Double> read) {
    return read.isGood() ? Show.upTo(read.value(), 3) + " min" : "";
  }

  private String shown(Answer<Double> read, boolean length) {
    if (!read.isGood()) {
      return "";
    }
    return length ? Show.length(read.value(), lengthUnit) : Show.upTo(read.value(), 3);
  }
}
