package walebook.desk.cloths;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import walebook.act.cloth.KeepCloth;
import walebook.desk.common.FormFields;
import walebook.desk.common.Session;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.Edge;

/** The form of a cloth's card. */
public final class ClothFormViewModel {
  /** What the edge can do; each is answered yes, no or not yet. */
  static final List<String> EDGE = List.of("frays", "sheds", "ladders", "curls", "needs-finishing");

  private final Session session;
  private final KeepCloth act;
  private final Consumer<Cloth> saved;
  private final FormFields fields;
  private @Nullable Cloth before;

  /**
   * A form.
   *
   * @param saved told of the cloth once it is on the disk
   */
  public ClothFormViewModel(Session session, Consumer<Cloth> saved) {
    this.session = session;
    this.saved = saved;
    this.act = new KeepCloth(session.book(), session.clock());
    fields =
        new FormFields(
            () -> {},
            "cloth-name",
            "cloth-kind",
            "fibre",
            "elastane",
            "mass",
            "cloth-width",
            "thickness",
            "frays",
            "sheds",
            "ladders",
            "curls",
            "needs-finishing",
            "remark",
            "retired");
  }

  public FormFields fields() {
    return fields;
  }

  /** Fills the form with a cloth, or empties it for a new one. */
  public void begin(@Nullable Cloth cloth, Unit unit) {
    before = cloth;
    fields.put(cloth == null ? Map.of("retired", "no") : typed(cloth, unit));
  }

  public void save() {
    Map<String, String> typed = fields.typed();
    boolean confirmed = fields.isConfirmed();
    Cloth was = before;
    session.run(
        progress -> act.keep(was, typed, confirmed),
        answer -> {
          fields.show(answer);
          if (answer.isGood()) {
            saved.accept(answer.value());
          }
        });
  }

  private static Map<String, String> typed(Cloth cloth, Unit unit) {
    Map<String, String> typed = new HashMap<>();
    typed.put("cloth-name", cloth.name());
    typed.put("cloth-kind", cloth.kind());
    typed.put("fibre", cloth.fibre());
    typed.put("elastane", number(cloth.elastanePercent()));
    typed.put("mass", number(cloth.massGm2()));
    typed.put("cloth-width", length(cloth.widthMm(), unit));
    typed.put("thickness", length(cloth.thicknessMm(), unit));
    Edge edge = cloth.edge();
    typed.put("frays", yes(edge.frays()));
    typed.put("sheds", yes(edge.sheds()));
    typed.put("ladders", yes(edge.ladders()));
    typed.put("curls", yes(edge.curls()));
    typed.put("needs-finishing", yes(edge.needsFinishing()));
    typed.put("remark", cloth.remark());
    typed.put("retired", cloth.retired() ? "yes" : "no");
    return typed;
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : Show.upTo(value, 3);
  }

  private static String length(@Nullable Double mm, Unit unit) {
    return mm == null ? "" : Show.upTo(mm / unit.inBase(), 4);
  }

  private static String yes(@Nullable Boolean value) {
    return value == null ? "" : value ? "yes" : "no";
  }
}
