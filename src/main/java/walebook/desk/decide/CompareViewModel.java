package walebook.desk.decide;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import walebook.garment.GarmentAnswers;
import walebook.garment.TwoChoices;

/** One sheet with two choices of cloth, grain and sewing; both are answered at every change. */
public final class CompareViewModel {
  /** The fields in which the two may differ; all others are the sheet's. */
  static final List<String> CHOICES =
      List.of(
          "cloth",
          "grain-round",
          "machine-kind",
          "stitch",
          "dial-width",
          "dial-length",
          "sewn",
          "trimmed");

  private final SheetViewModel sheet;
  private final SheetViewModel other;
  private final ReadOnlyObjectWrapper<@Nullable TwoChoices> both =
      new ReadOnlyObjectWrapper<>(this, "both");

  /** Begins with two choices alike. */
  CompareViewModel(SheetViewModel sheet) {
    this.sheet = sheet;
    this.other = sheet.copy();
    sheet.answersProperty().addListener((from, old, now) -> answered());
    other.answersProperty().addListener((from, old, now) -> answered());
    answered();
  }

  /** The sheet itself. */
  SheetViewModel sheet() {
    return sheet;
  }

  /** The sheet with the other choice. */
  SheetViewModel other() {
    return other;
  }

  /** Both answers; null while one of the two cannot be read. */
  public ReadOnlyObjectProperty<@Nullable TwoChoices> bothProperty() {
    return both.getReadOnlyProperty();
  }

  /** Whether the two choices differ in a field. */
  boolean differs(String field) {
    return !sheet.fields().text(field).equals(other.fields().text(field));
  }

  /** Brings the other one up to the sheet where there is nothing to choose. */
  void follow() {
    Map<String, String> typed = new HashMap<>(sheet.fields().typed());
    CHOICES.forEach(field -> typed.put(field, other.fields().text(field)));
    other.put(typed);
  }

  /** Puts the other choice on the sheet. */
  public void take() {
    CHOICES.forEach(field -> sheet.fields().field(field).text().set(other.fields().text(field)));
  }

  private void answered() {
    GarmentAnswers one = sheet.answersProperty().get();
    GarmentAnswers two = other.answersProperty().get();
    both.set(one == null || two == null ? null : new TwoChoices(one, two));
  }
}
