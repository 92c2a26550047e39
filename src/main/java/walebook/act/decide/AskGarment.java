package walebook.act.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import walebook.garment.AllowancePlan;
import walebook.garment.BandChoice;
import walebook.garment.BandPlan;
import walebook.garment.BandRatio;
import walebook.garment.ClothStretch;
import walebook.garment.GarmentKind;
import walebook.garment.GarmentQuestion;
import walebook.garment.GarmentRows;
import walebook.garment.GaugeNeed;
import walebook.garment.Girth;
import walebook.garment.GirthPlan;
import walebook.garment.GrainRound;
import walebook.garment.KindOpening;
import walebook.garment.Link;
import walebook.garment.LinkKind;
import walebook.garment.OpeningEdge;
import walebook.garment.OpeningPlan;
import walebook.garment.Wear;
import walebook.record.GarmentEdge;
import walebook.record.GarmentGirth;
import walebook.record.GarmentOpening;
import walebook.record.GarmentSheet;

/** Turns a sheet, a body's girths and the evidence into the question that the checks answer. */
final class AskGarment {
  /** Usual turns of a sleeve's cap and its armhole (common practice). */
  private static final double CAP_DEGREES = 100;

  private static final double ARMHOLE_DEGREES = 170;

  /** A usual allowance of a band, where the sheet tells none (common practice). */
  private static final double BAND_ALLOWANCE_MM = 6;

  private final GarmentSheet sheet;
  private final Map<String, Double> body;
  private final GarmentRows rows;
  private final GarmentKind kind;
  private final ClothStretch cloth;
  private final GarmentEvidence evidence;

  /**
   * The question of one sheet.
   *
   * @param body the body's girths in mm by key; those that are missing are asked for
   */
  AskGarment(
      GarmentSheet sheet,
      Map<String, Double> body,
      GarmentRows rows,
      ClothStretch cloth,
      GarmentEvidence evidence) {
    this.sheet = sheet;
    this.body = Map.copyOf(body);
    this.rows = rows;
    this.cloth = cloth;
    this.evidence = evidence;
    this.kind =
        rows.kinds().stream()
            .filter(each -> each.key().equals(sheet.kind()))
            .findFirst()
            .orElseThrow(
                () -> new IllegalArgumentException("no such kind of garment: " + sheet.kind()));
  }

  GarmentQuestion question() {
    Double from = sheet.pattern().gaugeFromMm();
    Double to = sheet.pattern().gaugeToMm();
    return new GarmentQuestion(
        kind,
        from == null || to == null ? null : new GaugeNeed(from, to),
        cloth,
        round(),
        Wear.of(sheet.wear()),
        rows.margin(kind.margin()),
        kind.girths().stream().map(this::girth).toList(),
        kind.openings().stream().map(this::opening).toList(),
        allowance(),
        kind.openings().stream().map(this::band).flatMap(Optional::stream).toList());
  }

  private GrainRound round() {
    return GrainRound.of(sheet.grainRound().key());
  }

  private GirthPlan girth(Girth girth) {
    GarmentGirth known =
        sheet.girths().stream()
            .filter(each -> each.girth().equals(girth.key()))
            .findFirst()
            .orElse(null);
    Double own = body.get(girth.key());
    return known == null
        ? new GirthPlan(girth, own, null, 0)
        : new GirthPlan(girth, own, known.finishedMm(), known.seams());
  }

  private OpeningPlan opening(KindOpening wanted) {
    Double over = body.get(wanted.over().key());
    GarmentOpening known = known(wanted);
    if (known == null) {
      return new OpeningPlan(wanted.edge(), wanted.over(), null, over, 0, 0, List.of());
    }
    return new OpeningPlan(
        wanted.edge(),
        wanted.over(),
        known.openingMm(),
        over,
        rows.turn(known.shape()),
        known.seams(),
        links(known));
  }

  private @Nullable GarmentOpening known(KindOpening wanted) {
    return sheet.openings().stream()
        .filter(each -> each.edge().equals(wanted.edge().key()))
        .findFirst()
        .orElse(null);
  }

  private List<Link> links(GarmentOpening opening) {
    List<Link> links = new ArrayList<>();
    for (GarmentEdge edge : opening.edges()) {
      for (LinkKind link : LinkKind.values()) {
        if (link.key().equals(edge.link())) {
          links.add(evidence.link(link, edge));
        }
      }
    }
    return links;
  }

  private @Nullable AllowancePlan allowance() {
    Double pattern = sheet.pattern().allowanceMm();
    Double sewn = sheet.sewing().allowanceMm();
    boolean sleeve = sheet.sewing().sleeve();
    return pattern == null || sewn == null
        ? null
        : new AllowancePlan(
            pattern,
            sewn,
            sheet.sewing().trimmed(),
            sleeve ? Math.toRadians(CAP_DEGREES) : 0,
            sleeve ? Math.toRadians(ARMHOLE_DEGREES) : 0);
  }

  /**
   * Bands are taken as cut from the garment's cloth, stretching the same way, and are sewn to the
   * opening as it comes out.
   */
  private Optional<BandChoice> band(KindOpening wanted) {
    GarmentOpening known = known(wanted);
    Double ratio = known == null ? null : known.bandRatio();
    Double width = known == null ? null : known.bandWidthMm();
    AllowancePlan allowance = allowance();
    OpeningPlan plan = opening(wanted);
    Double sewnMm = plan.sewnMm(allowance == null ? 0 : allowance.edgeGain());
    if (sewnMm == null || ratio == null || width == null) {
      return Optional.empty();
    }
    double joinMm = bandAllowanceMm();
    return Optional.of(
        new BandChoice(
            wanted.edge(),
            new BandPlan(sewnMm, ratio, width, joinMm, joinMm),
            place(wanted.edge()),
            plan.turn(),
            cloth.of(round()),
            wanted.over(),
            plan.overMm()));
  }

  /** What is sewn on the garment is sewn on its bands. */
  private double bandAllowanceMm() {
    Double sewn = sheet.sewing().allowanceMm();
    Double pattern = sheet.pattern().allowanceMm();
    return sewn != null ? sewn : pattern != null ? pattern : BAND_ALLOWANCE_MM;
  }

  private static BandRatio.Place place(OpeningEdge edge) {
    return switch (edge) {
      case NECKLINE -> BandRatio.Place.NECK;
      case SLEEVE_HEM, LEG_HEM, LEG_EDGE -> BandRatio.Place.CUFF;
      case HEM, WAIST_EDGE -> BandRatio.Place.WAIST;
    };
  }
}
