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
import walebook.garment.GaugeNeed;
import walebook.garment.Girth;
import walebook.garment.LinkKind;
import walebook.garment.OpeningEdge;
import walebook.garment.Wear;
import walebook.problem.Answer;
import walebook.quantity.Unit;
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
 * dial-length, sewn, trimmed, sleeve, seams, shape, wear, remark; for each girth finished-…, body-…
 * and …-seams; for each edge opening-…, its seams, a band's ratio and finished-width, and what goes
 * round it, such as neckline-hem, with -stitch, -machine, -width, -length and -stated behind it.
 */
public final class KeepGarment {
  /** Dials reach no further. */
  static final double USUAL_DIAL = 10;

  private static final double USUAL_ALLOWANCE_MM = 40;

  /** A front and a back. */
  static final int USUAL_SEAMS = 2;

  private static final List<String> OWN_FIELDS =
      List.of(
          "sheet-name",
          "garment-kind",
          "cloth",
          "grain-round",
          "wear",
          "gauge-from",
          "gauge-to",
          "allowance",
          "machine-kind",
          "stitch",
          "dial-width",
          "dial-length",
          "sewn",
          "trimmed",
          "sleeve",
          "seams",
          "shape",
          "keep-body",
          "remark");

  private static final List<String> OF_EDGE = List.of("-seams", "-ratio", "-finished-width");

  private static final List<String> OF_LINK =
      List.of("-stitch", "-machine", "-width", "-length", "-stated");

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

  /** The names of all fields of a sheet. */
  public static List<String> fields() {
    List<String> names = new ArrayList<>(OWN_FIELDS);
    for (Girth girth : Girth.values()) {
      names.add("finished-" + girth.key());
      names.add("body-" + girth.key());
      names.add(ReadGirths.seamsOf(girth));
    }
    for (OpeningEdge edge : OpeningEdge.values()) {
      names.add("opening-" + edge.key());
      OF_EDGE.forEach(part -> names.add(edge.key() + part));
      for (LinkKind link : links()) {
        String field = edge.key() + "-" + link.key();
        names.add(field);
        OF_LINK.forEach(part -> names.add(field + part));
      }
    }
    return List.copyOf(names);
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
    PatternAsks pattern = pattern(form);
    GarmentSewing sewing = sewing(form);
    Integer crossing = form.whole("seams", 0, 20);
    int seams = crossing == null ? USUAL_SEAMS : crossing;
    ReadGirths measures = new ReadGirths(form, tables.garment().girths());
    measures.body(kind);
    List<GarmentGirth> girths = measures.finished(kind, seams);
    List<GarmentOpening> openings =
        new ReadOpenings(form, tables.stitchTypes(), measures).of(kind, seams);
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
            wear(form, kind),
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

  private static String wear(Form form, GarmentKind kind) {
    String wear = form.text("wear");
    return wear.isEmpty() ? kind.wear().key() : Wear.of(wear).key();
  }

  private static PatternAsks pattern(Form form) {
    Double from = form.length("gauge-from", 500);
    Double to = form.length("gauge-to", 2000);
    Double allowance = form.number("allowance", 0, USUAL_ALLOWANCE_MM);
    if (from != null && to != null) {
      GaugeNeed.of(from, to, null).problems().forEach(form::add);
    } else if (from != null && form.text("gauge-to").isEmpty()) {
      form.ask("gauge-to", "gauge.half", "");
    } else if (to != null && form.text("gauge-from").isEmpty()) {
      form.ask("gauge-from", "gauge.half", "");
    }
    return form.isRefused() || from == null || to == null
        ? new PatternAsks(null, null, allowance)
        : new PatternAsks(from, to, allowance);
  }

  private GarmentSewing sewing(Form form) {
    MachineKind machine = form.choice("machine-kind", MachineKind.class);
    String stitch = form.needed("stitch");
    if (machine != null) {
      tables.stitchTypes().stream()
          .filter(each -> each.key().equals(stitch) && !each.machines().contains(machine.key()))
          .findFirst()
          .ifPresent(each -> form.ask("stitch", "stitch.other-machine", each.name()));
    }
    return new GarmentSewing(
        new StitchChoice(
            machine == null ? MachineKind.SEWING : machine,
            stitch,
            form.number("dial-width", 0, USUAL_DIAL),
            form.number("dial-length", 0, USUAL_DIAL)),
        form.number("sewn", 0, USUAL_ALLOWANCE_MM),
        Boolean.TRUE.equals(form.yes("trimmed")),
        Boolean.TRUE.equals(form.yes("sleeve")));
  }

  /** The body's girths in mm by key that the kind asks for, as far as they can be read. */
  public Map<String, Double> body(Map<String, String> typed, Unit lengths) {
    Form form = new Form(typed, lengths);
    Map<String, Double> body = new LinkedHashMap<>();
    new ReadGirths(form, tables.garment().girths())
        .body(kind(form))
        .forEach((girth, mm) -> body.put(girth.key(), mm));
    return body;
  }

  /**
   * Saves a sheet that was read, and lets the draft of whoever typed it go in the same step.
   *
   * @param fresh whether the book has it not yet
   * @param typist who typed it; null for whoever comes without a name
   * @param body the body's girths to keep; empty keeps none and forgets those kept before
   */
  public GarmentSheet save(
      GarmentSheet sheet, boolean fresh, @Nullable UUID typist, Map<String, Double> body) {
    return book.inOneStep(
        () -> {
          if (fresh) {
            book.garments().add(sheet);
            new KeepGarmentDraft(book).drop(null, typist);
          } else {
            book.garments().update(sheet);
          }
          new KeepGarmentDraft(book).drop(sheet, typist);
          book.garments().keepBody(sheet.id(), body);
          return sheet;
        });
  }
}
