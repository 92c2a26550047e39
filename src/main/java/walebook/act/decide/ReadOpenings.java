package walebook.act.decide;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.act.Form;
import walebook.garment.GarmentKind;
import walebook.garment.KindOpening;
import walebook.garment.LinkKind;
import walebook.garment.OpeningEdge;
import walebook.record.GarmentEdge;
import walebook.record.GarmentOpening;
import walebook.record.Keyed;
import walebook.record.MachineKind;
import walebook.record.StitchChoice;
import walebook.seam.StitchType;

/**
 * Reads the openings of a sheet: what goes round each, what it is sewn with where that differs from
 * the garment's seams, what a packet states, and a band's ratio and width. What is typed about
 * something that does not go round counts for nothing.
 */
final class ReadOpenings {
  private static final String STRAIGHT = "straight";
  private static final double USUAL_BAND_MM = 150;
  private static final double LEAST_RATIO = 0.2;
  private static final double USUAL_RATIO = 1.2;
  private static final double FARTHEST_PERCENT = 250;

  private final Form form;
  private final List<StitchType> stitches;
  private final ReadGirths girths;

  ReadOpenings(Form form, List<StitchType> stitches, ReadGirths girths) {
    this.form = form;
    this.stitches = List.copyOf(stitches);
    this.girths = girths;
  }

  /**
   * The openings of a kind of garment.
   *
   * @param seams that cross an opening for which nothing else is typed
   */
  List<GarmentOpening> of(GarmentKind kind, int seams) {
    List<GarmentOpening> openings = new ArrayList<>();
    for (KindOpening each : kind.openings()) {
      openings.add(opening(each, seams));
    }
    return openings;
  }

  private GarmentOpening opening(KindOpening each, int seams) {
    String edge = each.edge().key();
    Double mm = girths.opening(each);
    Integer own = form.whole(edge + "-seams", 0, 20);
    boolean band = has(edge, LinkKind.BAND);
    Double ratio = band ? form.number(edge + "-ratio", LEAST_RATIO, USUAL_RATIO) : null;
    Double wide = band ? form.length(edge + "-finished-width", USUAL_BAND_MM) : null;
    boolean whole = band && together(edge + "-ratio", edge + "-finished-width");
    return new GarmentOpening(
        edge,
        each.over().key(),
        mm,
        own == null ? seams : own,
        shape(each.edge()),
        whole && wide != null ? ratio : null,
        whole && ratio != null ? wide : null,
        links(edge));
  }

  /** A band's ratio and width are of use together only; the one that is missing is asked for. */
  private boolean together(String ratio, String width) {
    boolean hasRatio = !form.text(ratio).isEmpty();
    boolean hasWidth = !form.text(width).isEmpty();
    if (hasRatio && !hasWidth) {
      form.ask(width, "band.width-missing", "");
    } else if (hasWidth && !hasRatio) {
      form.ask(ratio, "band.ratio-missing", "");
    }
    return hasRatio && hasWidth;
  }

  private String shape(OpeningEdge edge) {
    String shape = form.text("shape");
    return edge == OpeningEdge.NECKLINE && !shape.isEmpty() ? shape : STRAIGHT;
  }

  private boolean has(String edge, LinkKind link) {
    return form.text(edge + "-" + link.key()).equals("yes");
  }

  private List<GarmentEdge> links(String edge) {
    List<GarmentEdge> links = new ArrayList<>();
    for (LinkKind link : KeepGarment.links()) {
      if (has(edge, link)) {
        String field = edge + "-" + link.key();
        links.add(
            new GarmentEdge(
                link.key(), stitch(field), form.number(field + "-stated", 0, FARTHEST_PERCENT)));
      }
    }
    return links;
  }

  private @Nullable StitchChoice stitch(String field) {
    String key = form.text(field + "-stitch");
    if (key.isEmpty()) {
      return null;
    }
    MachineKind machine = form.choice(field + "-machine", MachineKind.class);
    return new StitchChoice(
        machine == null ? machineOf(key) : machine,
        key,
        form.number(field + "-width", 0, KeepGarment.USUAL_DIAL),
        form.number(field + "-length", 0, KeepGarment.USUAL_DIAL));
  }

  /** The first kind of machine that sews a stitch, where none was said. */
  private MachineKind machineOf(String stitch) {
    return stitches.stream()
        .filter(each -> each.key().equals(stitch))
        .flatMap(each -> each.machines().stream())
        .map(each -> Keyed.find(MachineKind.class, each))
        .filter(each -> each != null)
        .findFirst()
        .orElse(MachineKind.SEWING);
  }
}
