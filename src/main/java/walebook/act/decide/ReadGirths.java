package walebook.act.decide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import walebook.act.Form;
import walebook.garment.BodyGirth;
import walebook.garment.GarmentKind;
import walebook.garment.Girth;
import walebook.garment.GirthCheck;
import walebook.garment.KindOpening;
import walebook.problem.Problem;
import walebook.record.GarmentGirth;

/** Reads a sheet's girths, of the garment and of the body, and asks where units look mixed up. */
final class ReadGirths {
  /** Nothing that is worn is so many times its wearer: one of the two is in another unit. */
  private static final double MIXED = 4;

  private final Form form;
  private final List<BodyGirth> rows;
  private final Map<Girth, Double> body = new LinkedHashMap<>();

  /**
   * Girths of one form.
   *
   * @param rows the reference table of body girths
   */
  ReadGirths(Form form, List<BodyGirth> rows) {
    this.form = form;
    this.rows = List.copyOf(rows);
  }

  /** The girths of the body that a kind of garment asks for. */
  static Set<Girth> ofBody(GarmentKind kind) {
    Set<Girth> girths = new LinkedHashSet<>(kind.girths());
    kind.openings().stream().map(KindOpening::over).forEach(girths::add);
    return girths;
  }

  /** Reads the body's girths, in mm; those that are missing or refused are left out. */
  Map<Girth, Double> body(GarmentKind kind) {
    for (Girth girth : ofBody(kind)) {
      Double mm =
          form.length(
              "body-" + girth.key(),
              value -> GirthCheck.ofBody("body-" + girth.key(), girth, value, rows));
      if (mm != null) {
        body.put(girth, mm);
      }
    }
    return Map.copyOf(body);
  }

  /** The field for the seams that cross one girth. */
  static String seamsOf(Girth girth) {
    return girth.key() + "-seams";
  }

  /**
   * The finished girths; call it once the body's are read.
   *
   * @param seams that cross a girth for which nothing else is typed
   */
  List<GarmentGirth> finished(GarmentKind kind, int seams) {
    List<GarmentGirth> girths = new ArrayList<>();
    for (Girth girth : kind.girths()) {
      String field = "finished-" + girth.key();
      Double finished = form.length(field, value -> finished(field, girth, value));
      if (finished != null) {
        Integer own = form.whole(seamsOf(girth), 0, 20);
        girths.add(new GarmentGirth(girth.key(), finished, own == null ? seams : own));
      }
    }
    return girths;
  }

  private List<Problem> finished(String field, Girth girth, double mm) {
    List<Problem> alone = GirthCheck.ofBody(field, girth, mm, rows);
    return alone.isEmpty() ? mixed(field, mm, body.get(girth)) : alone;
  }

  /** An opening on its seam line against what it passes over. */
  @Nullable Double opening(KindOpening opening) {
    String field = "opening-" + opening.edge().key();
    return form.length(
        field,
        mm -> {
          List<Problem> alone = GirthCheck.of(field, mm);
          return alone.isEmpty() ? mixed(field, mm, body.get(opening.over())) : alone;
        });
  }

  private static List<Problem> mixed(String field, double mm, @Nullable Double bodyMm) {
    return bodyMm != null && (mm > MIXED * bodyMm || bodyMm > MIXED * mm)
        ? List.of(GirthCheck.mixed(field, mm, bodyMm))
        : List.of();
  }
}
