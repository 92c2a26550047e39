package walebook.desk.pieces;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.FaultText;
import walebook.drawing.FaultKind;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.record.FaultPlace;
import walebook.record.FaultSeen;
import walebook.record.FaultWhen;
import walebook.seam.Fault;

/** The faults seen on a piece, chosen from pictures; kept as the text of the form's field. */
public final class FaultsViewModel {
  private final List<Fault> pictured;
  private final List<Fault> others;
  private final List<Fault> known;
  private final StringProperty text;
  private final ObservableList<FaultSeen> seen = FXCollections.observableArrayList();
  // Kept, since a view of a list holds its listeners only as long as it lives itself.
  private final ObservableList<FaultSeen> seenView = FXCollections.unmodifiableObservableList(seen);
  private final ReadOnlyObjectWrapper<@Nullable FaultSeen> inHand =
      new ReadOnlyObjectWrapper<>(this, "inHand");

  /**
   * Makes it over a field.
   *
   * @param text of the field of faults; read when it changes and written at each choice
   */
  public FaultsViewModel(List<Fault> known, StringProperty text) {
    this.known = List.copyOf(known);
    this.pictured = known.stream().filter(each -> FaultKind.of(each.key()) != null).toList();
    this.others = known.stream().filter(each -> FaultKind.of(each.key()) == null).toList();
    this.text = text;
    text.addListener((from, old, now) -> read(now));
    read(text.get());
  }

  /** Faults that have a picture, as they stand in the table. */
  public List<Fault> pictured() {
    return pictured;
  }

  /** Faults without one. */
  public List<Fault> others() {
    return others;
  }

  /** The faults seen, in the order of choosing. */
  public ObservableList<FaultSeen> seen() {
    return seenView;
  }

  /** The one whose place, severity and time are being chosen, or null. */
  public ReadOnlyObjectProperty<@Nullable FaultSeen> inHandProperty() {
    return inHand.getReadOnlyProperty();
  }

  /** The plain name of a fault, its explanation in brackets left out. */
  public String name(String key) {
    return known.stream()
        .filter(each -> each.key().equals(key))
        .map(each -> each.name().replaceAll(" \\(.*", ""))
        .findFirst()
        .orElse(key);
  }

  public boolean isSeen(String key) {
    return seen.stream().anyMatch(each -> each.fault().equals(key));
  }

  /** Adds a fault, or takes it in hand when it is there already. */
  public void choose(String key) {
    FaultSeen found =
        seen.stream().filter(each -> each.fault().equals(key)).findFirst().orElse(null);
    if (found == null) {
      FaultSeen fresh =
          known.stream()
              .filter(each -> each.key().equals(key))
              .findFirst()
              .map(FaultText::usual)
              .orElseThrow();
      List<FaultSeen> next = new ArrayList<>(seen);
      next.add(fresh);
      write(next);
      inHand.set(fresh);
    } else {
      inHand.set(found);
    }
  }

  /** Takes one back out. */
  public void remove(FaultSeen fault) {
    List<FaultSeen> next = new ArrayList<>(seen);
    next.remove(fault);
    if (fault.equals(inHand.get())) {
      inHand.set(null);
    }
    write(next);
  }

  public void severity(int severity) {
    change(fault -> new FaultSeen(fault.fault(), fault.place(), severity, fault.when()));
  }

  public void place(FaultPlace place) {
    change(fault -> new FaultSeen(fault.fault(), place, fault.severity(), fault.when()));
  }

  public void when(FaultWhen when) {
    change(fault -> new FaultSeen(fault.fault(), fault.place(), fault.severity(), when));
  }

  private void change(java.util.function.UnaryOperator<FaultSeen> how) {
    FaultSeen before = inHand.get();
    if (before == null) {
      return;
    }
    FaultSeen after = how.apply(before);
    List<FaultSeen> next = new ArrayList<>(seen);
    next.replaceAll(each -> each.equals(before) ? after : each);
    write(next);
    inHand.set(after);
  }

  private void write(List<FaultSeen> next) {
    seen.setAll(next);
    text.set(FaultText.write(next));
  }

  private void read(String now) {
    if (now.equals(FaultText.write(seen))) {
      return;
    }
    Answer<List<FaultSeen>> answer = FaultText.read(now, known, Place.field("faults"));
    seen.setAll(answer.isGood() ? answer.value() : List.of());
    inHand.set(null);
  }
}
