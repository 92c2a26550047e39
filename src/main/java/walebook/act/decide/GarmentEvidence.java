package walebook.act.decide;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.cloth.ReadingUncertainty;
import walebook.compare.ClothStretch;
import walebook.garment.Link;
import walebook.garment.LinkKind;
import walebook.record.GarmentEdge;
import walebook.record.GarmentSheet;
import walebook.record.Measure;
import walebook.record.Method;
import walebook.record.PieceOutcome;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.StitchChoice;
import walebook.record.TestPiece;
import walebook.seam.StitchType;
import walebook.seam.Zigzag;

/**
 * What is known of the things round an opening: test pieces on the garment's cloth, along the grain
 * that goes round, with the stitch that is meant; where there is none, what a packet states or the
 * stitch's geometry allows.
 */
final class GarmentEvidence {
  private final GarmentSheet sheet;
  private final List<TestPiece> pieces;
  private final List<StitchType> stitches;

  /**
   * Evidence for one sheet.
   *
   * @param pieces of the sheet's cloth
   * @param stitches the table of stitch types
   */
  GarmentEvidence(GarmentSheet sheet, List<TestPiece> pieces, List<StitchType> stitches) {
    this.sheet = sheet;
    this.pieces = List.copyOf(pieces);
    this.stitches = List.copyOf(stitches);
  }

  /** The link of an edge; unknown where nothing at all tells how far it stretches. */
  Link link(LinkKind kind, GarmentEdge edge) {
    StitchChoice own = edge.stitch();
    StitchChoice stitch = own == null ? sheet.sewing().stitch() : own;
    List<TestPiece> pulled = pieces.stream().filter(each -> tells(each, kind, stitch)).toList();
    if (!pulled.isEmpty()) {
      return measured(kind, pulled);
    }
    Double stated = edge.statedPercent();
    return stated != null ? Link.model(kind, stated) : model(kind, stitch);
  }

  private boolean tells(TestPiece piece, LinkKind kind, StitchChoice stitch) {
    return piece.cloth().grain() == sheet.grainRound()
        && piece.measure().counting() != null
        && piece.seen().outcome() != PieceOutcome.SPOILED
        && isOf(piece, kind)
        && isSewnWith(piece, stitch);
  }

  private static boolean isOf(TestPiece piece, LinkKind kind) {
    Method method = piece.setting().method();
    boolean stabilised = piece.setting().isStabilised();
    return switch (kind) {
      case SEAM -> method == Method.SEAM && !stabilised;
      case HEM -> method == Method.HEM;
      case BAND -> method == Method.BAND;
      case INTERFACING -> stabilised;
      case CLOTH, ELASTIC -> false;
    };
  }

  /** A dial that the sheet leaves open may stand anywhere. */
  private static boolean isSewnWith(TestPiece piece, StitchChoice stitch) {
    return piece.setting().machineKind() == stitch.machineKind()
        && piece.setting().stitchType().equals(stitch.stitchType())
        && isSet(stitch.dialWidth(), piece.setting().dialWidth())
        && isSet(stitch.dialLength(), piece.setting().dialLength());
  }

  private static boolean isSet(@Nullable Double wanted, @Nullable Double sewn) {
    return wanted == null || wanted.equals(sewn);
  }

  /**
   * The piece that gave soonest speaks for all; where none gave, the least that all held to. Gave
   * and held are never averaged.
   */
  private static Link measured(LinkKind kind, List<TestPiece> pulled) {
    List<TestPiece> gave = pulled.stream().filter(GarmentEvidence::isGave).toList();
    Measure speaks =
        (gave.isEmpty() ? pulled : gave)
            .stream()
                .map(TestPiece::measure)
                .min(Comparator.comparingDouble(GarmentEvidence::percent))
                .orElseThrow();
    int students = (int) pulled.stream().map(each -> each.whose().studentId()).distinct().count();
    double percent = Math.max(0, percent(speaks));
    return gave.isEmpty()
        ? Link.held(kind, percent, uncertainty(speaks), pulled.size(), students)
        : Link.gave(kind, percent, uncertainty(speaks), pulled.size(), students);
  }

  private static boolean isGave(TestPiece piece) {
    PullReading pull = piece.measure().counting();
    return pull != null && pull.end() == SeamEnd.GAVE;
  }

  private static double percent(Measure measure) {
    Double percent = measure.seamStretchPercent();
    return percent == null ? 0 : percent;
  }

  private static double uncertainty(Measure measure) {
    PullReading pull = measure.counting();
    Double gauge = measure.gaugeMm();
    double u = ReadingUncertainty.ofResolution(ClothStretch.READ_TO_MM);
    return pull == null || gauge == null
        ? 0
        : ReadingUncertainty.ofChange(gauge, pull.endMm(), u, u);
  }

  /** Only a zigzag of known width and length can be reckoned; of other stitches nothing is said. */
  private Link model(LinkKind kind, StitchChoice stitch) {
    Double width = stitch.dialWidth();
    Double length = stitch.dialLength();
    StitchType type =
        stitches.stream()
            .filter(each -> each.key().equals(stitch.stitchType()))
            .findFirst()
            .orElse(null);
    boolean sewn = kind == LinkKind.SEAM || kind == LinkKind.HEM;
    if (type == null || !isZigzag(type) || !sewn || width == null || length == null) {
      return Link.unknown(kind);
    }
    return length > 0
        ? Link.model(kind, new Zigzag(width, length, type.stepsPerSwing()).extensionPercent())
        : Link.unknown(kind);
  }

  private static boolean isZigzag(StitchType type) {
    return type.hasWidth() && type.machines().contains("sewing");
  }
}
