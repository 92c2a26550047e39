package walebook.desk.term;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.KeepMachine;
import walebook.desk.common.FormFields;
import walebook.desk.common.Session;
import walebook.quantity.Show;
import walebook.record.Dial;
import walebook.record.Machine;
import walebook.seam.StitchType;

/** The machines in the room and the card of the one that is open. */
public final class MachinesViewModel {
  private final Session session;
  private final KeepMachine act;
  private final ObservableList<Machine> machines = FXCollections.observableArrayList();
  private final ReadOnlyBooleanWrapper editing = new ReadOnlyBooleanWrapper(this, "editing");
  private final ObservableList<StitchType> offered = FXCollections.observableArrayList();
  private final Set<String> stitches = new LinkedHashSet<>();
  private final FormFields fields;
  private @Nullable Machine before;

  public MachinesViewModel(Session session) {
    this.session = session;
    this.act = new KeepMachine(session.book(), session.clock());
    fields =
        new FormFields(
            () -> {},
            "machine-number",
            "machine-name",
            "machine-kind",
            "needle-to-knife",
            "pressure-lower",
            "pressure-normal",
            "pressure-higher",
            "tension-lower",
            "tension-normal",
            "tension-higher",
            "feed-least",
            "feed-most",
            "dial-lengths",
            "dial-widths",
            "remark",
            "retired");
    fields.field("machine-kind").text().addListener((from, old, now) -> offer());
    session.changesProperty().addListener((from, old, now) -> read());
    read();
  }

  public ObservableList<Machine> machines() {
    return machines;
  }

  /** True while a card is open. */
  public ReadOnlyBooleanProperty editingProperty() {
    return editing.getReadOnlyProperty();
  }

  public FormFields fields() {
    return fields;
  }

  /** The stitches that a machine of the chosen kind can have. */
  public ObservableList<StitchType> offered() {
    return offered;
  }

  public boolean sews(StitchType stitch) {
    return stitches.contains(stitch.key());
  }

  public void sews(StitchType stitch, boolean does) {
    if (does) {
      stitches.add(stitch.key());
    } else {
      stitches.remove(stitch.key());
    }
  }

  /** Opens a machine's card, or an empty one. */
  public void open(@Nullable Machine machine) {
    before = machine;
    stitches.clear();
    fields.put(machine == null ? fresh() : typed(machine));
    if (machine != null) {
      stitches.addAll(machine.stitches());
    }
    offered.clear();
    offer();
    editing.set(true);
  }

  public void close() {
    editing.set(false);
  }

  public void save() {
    Map<String, String> typed = fields.typed();
    Set<String> possible = offered.stream().map(StitchType::key).collect(Collectors.toSet());
    typed.put(
        "stitches", stitches.stream().filter(possible::contains).collect(Collectors.joining(" ")));
    boolean confirmed = fields.isConfirmed();
    Machine was = before;
    session.run(
        progress -> act.keep(was, typed, confirmed),
        answer -> {
          fields.show(answer);
          if (answer.isGood()) {
            editing.set(false);
            session.changed();
          }
        });
  }

  private Map<String, String> fresh() {
    int next = machines.stream().mapToInt(Machine::number).max().orElse(0) + 1;
    return Map.of("machine-number", Integer.toString(next), "machine-kind", "sewing");
  }

  private void offer() {
    String kind = fields.text("machine-kind");
    List<StitchType> now =
        session.tables().stitchTypes().stream()
            .filter(each -> each.machines().contains(kind))
            .toList();
    if (!offered.equals(now)) {
      offered.setAll(now);
    }
  }

  private static Map<String, String> typed(Machine machine) {
    Map<String, String> typed = new HashMap<>();
    typed.put("machine-number", Integer.toString(machine.number()));
    typed.put("machine-name", machine.name());
    typed.put("machine-kind", machine.kind().key());
    typed.put("needle-to-knife", number(machine.needleToKnifeMm()));
    typed.put("pressure-lower", machine.pressure().lower());
    typed.put("pressure-normal", machine.pressure().normal());
    typed.put("pressure-higher", machine.pressure().higher());
    typed.put("tension-lower", machine.tension().lower());
    typed.put("tension-normal", machine.tension().normal());
    typed.put("tension-higher", machine.tension().higher());
    typed.put("feed-least", number(machine.feedLeast()));
    typed.put("feed-most", number(machine.feedMost()));
    typed.put("dial-lengths", dials(machine, Dial.LENGTH));
    typed.put("dial-widths", dials(machine, Dial.WIDTH));
    typed.put("remark", machine.remark());
    typed.put("retired", machine.retired() ? "yes" : "no");
    return typed;
  }

  private static String dials(Machine machine, Dial what) {
    List<String> pairs = new ArrayList<>();
    machine.dials().stream()
        .filter(each -> each.what() == what)
        .forEach(each -> pairs.add(number(each.dial()) + "=" + number(each.sewnMm())));
    return String.join(" ", pairs);
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : Show.upTo(value, 3);
  }

  private void read() {
    session.run(progress -> session.book().machines().all(), machines::setAll);
  }
}
