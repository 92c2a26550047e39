package walebook.desk.decide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.cloth.NewestWash;
import walebook.desk.common.DayWords;
import walebook.desk.common.Session;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.ClothWash;
import walebook.record.Grain;

/** Fills what a check asks of a wash from the newest one of a cloth; each can be typed over. */
public final class FromWashViewModel {
  /** Changes are typed and shown to a tenth, lengths as they were measured. */
  private static final int PLACES = 1;

  private static final String WASH_FIRST = "wash-first";
  private static final String CUT_LENGTH = "cut-length";
  private static final String WASH_CHANGE = "wash-change";
  private static final Set<String> ASK = Set.of(WASH_FIRST, CUT_LENGTH, WASH_CHANGE);

  private final Session session;
  private final CheckViewModel check;
  private final Unit lengths;
  private final ObservableList<NewestWash> cloths = FXCollections.observableArrayList();
  private final ObjectProperty<@Nullable NewestWash> chosen =
      new SimpleObjectProperty<>(this, "chosen");
  private final ObjectProperty<Grain> grain =
      new SimpleObjectProperty<>(this, "grain", Grain.COURSE);
  private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper(this, "says", "");
  private final Map<String, String> filled = new LinkedHashMap<>();
  private String where = "";
  private boolean filling;

  /**
   * For one check.
   *
   * @param lengths what a length without a unit means
   */
  public FromWashViewModel(Session session, CheckViewModel check, Unit lengths) {
    this.session = session;
    this.check = check;
    this.lengths = lengths;
    chosen.addListener((from, old, now) -> fill());
    grain.addListener((from, old, now) -> fill());
    check.onTyped(this::typedOver);
    session.changesProperty().addListener((from, old, now) -> read());
    read();
  }

  /** Whether a check asks for what a wash did. */
  static boolean isAskedBy(CheckViewModel check) {
    return ASK.contains(check.name());
  }

  /** The cloths of which a wash is logged. */
  public ObservableList<NewestWash> cloths() {
    return cloths;
  }

  /** The cloth that the check is filled from; null while nobody chose one. */
  public ObjectProperty<@Nullable NewestWash> chosenProperty() {
    return chosen;
  }

  /** The grain that goes round, or that the length lies along. */
  public ObjectProperty<Grain> grainProperty() {
    return grain;
  }

  /** Where the figures come from, as long as they stand as they were filled in. */
  public ReadOnlyStringProperty saysProperty() {
    return says.getReadOnlyProperty();
  }

  /** The check was begun again: nothing is filled in. */
  void forget() {
    chosen.set(null);
  }

  private void read() {
    session.run(
        progress -> NewestWash.in(session.book()),
        found -> {
          NewestWash before = chosen.get();
          UUID kept = before == null ? null : before.clothId();
          boolean own = before != null && says.get().isEmpty();
          cloths.setAll(found);
          // What somebody typed over stays, whatever is logged meanwhile.
          if (!own) {
            chosen.set(
                found.stream()
                    .filter(each -> each.clothId().equals(kept))
                    .findFirst()
                    .orElse(null));
          }
        });
  }

  private void fill() {
    filled.clear();
    where = "";
    NewestWash now = chosen.get();
    if (now != null) {
      List<String> from = new ArrayList<>();
      Grain round = grain.get();
      switch (check.name()) {
        case WASH_FIRST -> {
          change(now, round, "round-change", from);
          change(now, round == Grain.COURSE ? Grain.WALE : Grain.COURSE, "along-change", from);
        }
        case CUT_LENGTH -> change(now, round, "change", from);
        default -> marks(now, round, from);
      }
      where = session.words().say("desk.decide.wash.from", now.cloth(), String.join("; ", from));
    }
    filling = true;
    filled.forEach(check::type);
    filled.replaceAll((field, typed) -> check.shown(field));
    filling = false;
    says.set(where);
  }

  private void change(NewestWash of, Grain along, String field, List<String> from) {
    ClothWash wash = of.along().get(along);
    if (wash != null) {
      filled.put(field, Show.upTo(wash.changePercent(), PLACES));
    }
    from.add(said(wash, along));
  }

  private void marks(NewestWash of, Grain along, List<String> from) {
    ClothWash wash = of.along().get(along);
    if (wash != null) {
      filled.put("before", length(wash.beforeMm()));
      filled.put("after", length(wash.afterMm()));
    }
    from.add(said(wash, along));
  }

  private String length(double mm) {
    return Show.upTo(mm / lengths.inBase(), 2);
  }

  private String said(@Nullable ClothWash wash, Grain along) {
    String grainSays = session.words().say("desk.today.grain." + along.key());
    if (wash == null) {
      return session.words().say("desk.decide.wash.not-marked", grainSays);
    }
    String change = Show.percent(wash.changePercent());
    String how = wash.wash().strip();
    return how.isEmpty()
        ? session
            .words()
            .say("desk.decide.wash.grain", grainSays, change, DayWords.of(wash.washedOn()))
        : session
            .words()
            .say(
                "desk.decide.wash.grain-how", grainSays, change, DayWords.of(wash.washedOn()), how);
  }

  /** Somebody's own figure is not the wash's any more. */
  private void typedOver() {
    if (!filling) {
      boolean stands =
          filled.entrySet().stream()
              .allMatch(each -> check.shown(each.getKey()).equals(each.getValue()));
      says.set(stands ? where : "");
    }
  }
}
