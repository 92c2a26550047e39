package walebook.act.decide;

import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.Form;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.garment.GarmentKind;
import walebook.garment.Girth;
import walebook.garment.KindOpening;
import walebook.garment.LinkKind;
import walebook.garment.OpeningEdge;
import walebook.problem.Answer;
import walebook.quantity.Unit;
import walebook.record.GarmentEdge;
import walebook.record.GarmentGirth;
import walebook.record.GarmentOpening;
import walebook.record.GarmentSewing;
import walebook.record.GarmentSheet;
import walebook.record.Grain;
import walebook.record.MachineKind;
import walebook.record.PatternAsks;
import walebook.record.Stamp;
import walebook.record.StitchChoice;
import walebook.tables.SharedTables;

/**
 * Reads a garment sheet as it was typed, and saves it. Fields: sheet-name, garment-kind, cloth (its
 * key), grain-round, gauge-from, gauge-to, allowance, machine-kind, stitch, dial-width,
 * dial-length, sewn, trimmed, sleeve, seams, shape; for each girth finished-… and body-…; for each
 * edge opening-… and what goes round it, such as neckline-hem.
 */
public final class KeepGarment {
  private static final double USUAL_GIRTH_MM = 2000;
  private static final double USUAL_ALLOWANCE_MM = 40;
  private static final int USUAL_SEAMS = 2;
  private static final String STRAIGHT = "straight";

  private final Book book;
  private final SharedTables tables;
  private final Clock clock;

  public KeepGarment(Book book, SharedTables tables, Clock clock) {
    this.book = book;
    this.tables = tables;
    this.clock = clock;
  }

  /** What goes round an edge beside the cloth. */
  public static List<LinkKind> links() {
    List<LinkKind> links = new ArrayList<>(List.of(LinkKind.values()));
    links.remove(LinkKind.CLOTH);
    return List.copyOf(links);
  }

  /**
   * Reads a sheet without saving it; no book is asked.
   *
   * @param before the sheet as it was, or null for a new one
   * @param student whose a new one is; null for the class's
   * @param lengths what a length without a unit means
   */
  public Answer<GarmentSheet> read(
      @Nullable GarmentSheet before,
      @Nullable UUID student,
      Map<String, String> typed,
      Unit lengths) {
    Form form = new Form(typed, lengths);
    GarmentKind kind = kind(form);
    Double from = form.length("gauge-from", 500);
    Double to = form.length("gauge-to", 1000);
    if (from != null && to != null && to < from) {
      form.refuse("gauge-to", "gauge.shorter", form.text("gauge-from"));
    }
    PatternAsks pattern =
        form.isRefused() || from == null || to == null
            ? new PatternAsks(null, null, form.number("allowance", 0, USUAL_ALLOWANCE_MM))
            : new PatternAsks(from, to, form.number("allowance", 0, USUAL_ALLOWANCE_MM));
    GarmentSewing sewing = sewing(form);
    Integer crossing = form.whole("seams", 0, 20);
    int seams = crossing == null ? USUAL_SEAMS : crossing;
    List<GarmentGirth> girths = girths(form, kind, seams);
    List<GarmentOpening> openings = openings(form, kind, seams);
    for (Girth girth : Girth.values()) {
      form.length("body-" + girth.key(), USUAL_GIRTH_MM);
    }
    String name = form.needed("sheet-name");
    Grain grain = form.choice("grain-round", Grain.class);
    String cloth = form.text("cloth");
    Stamp stamp =
        before == null ? Stamp.fresh(clock.instant()) : before.stamp().next(clock.instant());
    if (form.isRefused()) {
      return Answer.bad(form.problems());
    }
    GarmentSheet sheet =
        new GarmentSheet(
            before == null ? Ids.next() : before.id(),
            before == null ? student : before.studentId(),
            name,
            kind.key(),
            cloth.isEmpty() ? null : UUID.fromString(cloth),
            grain == null ? Grain.COURSE : grain,
            kind.wear().key(),
            pattern,
            sewing,
            girths,
            openings,
            form.text("remark"),
            stamp);
    return new Answer.Good<>(sheet, form.problems());
  }

  private GarmentKind kind(Form form) {
    String key = form.text("garment-kind");
    return tables.garment().kinds().stream()
        .filter(each -> each.key().equals(key))
        .findFirst()
        .orElseGet(
            () -> {
              form.refuse("garment-kind", "field.needed", "");
              return tables.garment().kinds().get(0);
            });
  }

  private static GarmentSewing sewing(Form form) {
    MachineKind machine = form.choice("machine-kind", MachineKind.class);
    return new GarmentSewing(
        new StitchChoice(
            machine == null ? MachineKind.SEWING : machine,
            form.needed("stitch"),
            form.number("dial-width", 0, 10),
            form.number("dial-length", 0, 10)),
        form.number("sewn", 0, USUAL_ALLOWANCE_MM),
        Boolean.TRUE.equals(form.yes("trimmed")),
        Boolean.TRUE.equals(form.yes("sleeve")));
  }

  private static List<GarmentGirth> girths(Form form, GarmentKind kind, int seams) {
    List<GarmentGirth> girths = new ArrayList<>();
    for (Girth girth : kind.girths()) {
      Double finished = form.length("finished-" + girth.key(), USUAL_GIRTH_MM);
      if (finished != null) {
        girths.add(new GarmentGirth(girth.key(), finished, seams));
      }
    }
    return girths;
  }

  private static List<GarmentOpening> openings(Form form, GarmentKind kind, int seams) {
    List<GarmentOpening> openings = new ArrayList<>();
    for (KindOpening each : kind.openings()) {
      String edge = each.edge().key();
      boolean neck = each.edge() == OpeningEdge.NECKLINE;
      String shape = form.text("shape");
      openings.add(
          new GarmentOpening(
              edge,
              each.over().key(),
              form.length("opening-" + edge, USUAL_GIRTH_MM),
              seams,
              neck && !shape.isEmpty() ? shape : STRAIGHT,
              null,
              null,
              links().stream()
                  .filter(link -> form.text(edge + "-" + link.key()).equals("yes"))
                  .map(link -> new GarmentEdge(link.key(), null, null))
                  .toList()));
    }
    return openings;
  }

  /** The body's girths in mm by key, as far as they can be read. */
  public static Map<String, Double> body(Map<String, String> typed, Unit lengths) {
    Form form = new Form(typed, lengths);
    Map<String, Double> body = new LinkedHashMap<>();
    for (Girth girth : Girth.values()) {
      Double mm = form.length("body-" + girth.key(), USUAL_GIRTH_MM);
      if (mm != null) {
        body.put(girth.key(), mm);
      }
    }
    return body;
  }

  /**
   * Saves a sheet that was read.
   *
   * @param fresh whether the book has it not yet
   * @param body the body's girths to keep; empty keeps none and forgets those kept before
   */
  public GarmentSheet save(GarmentSheet sheet, boolean fresh, Map<String, Double> body) {
    return book.inOneStep(
        () -> {
          if (fresh) {
            book.garments().add(sheet);
          } else {
            book.garments().update(sheet);
          }
          book.garments().keepBody(sheet.id(), body);
          return sheet;
        });
  }
}
