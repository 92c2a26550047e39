package walebook.act.decide;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.GarmentEdge;
import walebook.record.GarmentGirth;
import walebook.record.GarmentOpening;
import walebook.record.GarmentSheet;
import walebook.record.StitchChoice;

/** A saved sheet as the form shows it: the fields of {@link KeepGarment}. */
public final class TypedGarment {
  private TypedGarment() {}

  /**
   * The fields of a sheet.
   *
   * @param body the body's girths in mm by key, as far as they were kept
   * @param lengths the unit that lengths are shown in
   */
  public static Map<String, String> of(GarmentSheet sheet, Map<String, Double> body, Unit lengths) {
    Map<String, String> typed = new HashMap<>();
    typed.put("sheet-name", sheet.name());
    typed.put("garment-kind", sheet.kind());
    typed.put("cloth", sheet.clothId() == null ? "" : sheet.clothId().toString());
    typed.put("grain-round", sheet.grainRound().key());
    typed.put("wear", sheet.wear());
    typed.put("gauge-from", length(sheet.pattern().gaugeFromMm(), lengths));
    typed.put("gauge-to", length(sheet.pattern().gaugeToMm(), lengths));
    typed.put("allowance", length(sheet.pattern().allowanceMm(), Unit.MM));
    StitchChoice stitch = sheet.sewing().stitch();
    typed.put("machine-kind", stitch.machineKind().key());
    typed.put("stitch", stitch.stitchType());
    typed.put("dial-width", length(stitch.dialWidth(), Unit.MM));
    typed.put("dial-length", length(stitch.dialLength(), Unit.MM));
    typed.put("sewn", length(sheet.sewing().allowanceMm(), Unit.MM));
    typed.put("trimmed", sheet.sewing().trimmed() ? "yes" : "no");
    typed.put("sleeve", sheet.sewing().sleeve() ? "yes" : "no");
    int seams = usualSeams(sheet);
    typed.put("seams", Integer.toString(seams));
    for (GarmentGirth girth : sheet.girths()) {
      typed.put("finished-" + girth.girth(), length(girth.finishedMm(), lengths));
      typed.put(girth.girth() + "-seams", unless(seams, girth.seams()));
    }
    for (GarmentOpening opening : sheet.openings()) {
      typed.put(opening.edge() + "-seams", unless(seams, opening.seams()));
      put(typed, opening, lengths);
    }
    body.forEach((girth, mm) -> typed.put("body-" + girth, length(mm, lengths)));
    typed.put("remark", sheet.remark());
    return typed;
  }

  /** The most usual number of seams; of two alike the larger. */
  private static int usualSeams(GarmentSheet sheet) {
    Map<Integer, Integer> times = new HashMap<>();
    sheet.girths().forEach(each -> times.merge(each.seams(), 1, Integer::sum));
    sheet.openings().forEach(each -> times.merge(each.seams(), 1, Integer::sum));
    return times.entrySet().stream()
        .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey)
        .orElse(KeepGarment.USUAL_SEAMS);
  }

  private static String unless(int usual, int seams) {
    return seams == usual ? "" : Integer.toString(seams);
  }

  private static void put(Map<String, String> typed, GarmentOpening opening, Unit lengths) {
    typed.put("opening-" + opening.edge(), length(opening.openingMm(), lengths));
    typed.put(opening.edge() + "-ratio", number(opening.bandRatio()));
    typed.put(opening.edge() + "-finished-width", length(opening.bandWidthMm(), lengths));
    if (opening.edge().equals("neckline")) {
      typed.put("shape", opening.shape());
    }
    for (GarmentEdge edge : opening.edges()) {
      put(typed, opening.edge() + "-" + edge.link(), edge);
    }
    if (opening.bandRatio() != null) {
      typed.put(opening.edge() + "-band", "yes");
    }
  }

  private static void put(Map<String, String> typed, String field, GarmentEdge edge) {
    typed.put(field, "yes");
    typed.put(field + "-stated", number(edge.statedPercent()));
    StitchChoice own = edge.stitch();
    if (own != null) {
      typed.put(field + "-stitch", own.stitchType());
      typed.put(field + "-machine", own.machineKind().key());
      typed.put(field + "-width", number(own.dialWidth()));
      typed.put(field + "-length", number(own.dialLength()));
    }
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : Show.upTo(value, 4);
  }

  private static String length(@Nullable Double mm, Unit unit) {
    return mm == null ? "" : Show.upTo(mm / unit.inBase(), 4);
  }
}
