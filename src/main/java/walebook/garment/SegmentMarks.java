package walebook.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/**
 * Marks for an opening of segments. Segment i of length L_i takes the band length b_i = L_i (1 − λ
 * k_i); λ = (Σ L − b) ÷ Σ (k L), so that the parts always make up the band.
 */
public final class SegmentMarks {
  private SegmentMarks() {}

  /** λ, the shortening of a segment of weight 1; not a number when all weights are 0. */
  public static double shortening(List<Segment> segments, double bandMm) {
    double whole = segments.stream().mapToDouble(Segment::lengthMm).sum();
    double weighted = segments.stream().mapToDouble(s -> s.lengthMm() * s.weight()).sum();
    return whole == bandMm ? 0 : (whole - bandMm) / weighted;
  }

  /** How much band each segment takes, in order; the parts add up to the band. */
  public static List<Double> parts(List<Segment> segments, double bandMm) {
    double shortening = shortening(segments, bandMm);
    return segments.stream().map(s -> s.lengthMm() * (1 - shortening * s.weight())).toList();
  }

  /** The marks, from the beginning of the first segment to the end of the last. */
  public static List<BandMark> of(List<Segment> segments, double bandMm) {
    List<BandMark> marks = new ArrayList<>();
    marks.add(new BandMark(0, 0));
    List<Double> parts = parts(segments, bandMm);
    double opening = 0;
    double band = 0;
    for (int i = 0; i < parts.size(); i++) {
      opening += segments.get(i).lengthMm();
      band += parts.get(i);
      marks.add(new BandMark(opening, band));
    }
    return List.copyOf(marks);
  }

  /**
   * Works out the marks.
   *
   * @param lengthsMm of the segments in order, each over 0
   * @param weights as many, none negative; empty for even strain
   * @param openingMm what the segments must make up, to 1 mm
   * @param bandMm the joined band, over 0
   */
  public static Answer<Working> worked(
      List<Double> lengthsMm, List<Double> weights, double openingMm, double bandMm) {
    GarmentNeeds needs =
        new GarmentNeeds()
            .girth("opening", openingMm)
            .positive("band-length", bandMm, "450 mm")
            .between("segments", lengthsMm.size(), 1, 40);
    lengthsMm.forEach(length -> needs.positive("segments", length, "90; 120; 70"));
    weights.forEach(weight -> needs.notNegative("weights", weight, "1; 3; 1"));
    double sum = lengthsMm.stream().mapToDouble(Double::doubleValue).sum();
    needs
        .also(
            !weights.isEmpty() && weights.size() != lengthsMm.size(),
            Problem.refuse(
                "marks.uneven",
                Place.field("weights"),
                Integer.toString(weights.size()),
                Integer.toString(lengthsMm.size())))
        .also(
            !(Math.abs(sum - openingMm) <= 1),
            Problem.refuse("marks.sum", Place.field("segments"), Show.mm(sum), Show.mm(openingMm)));
    boolean readable =
        !lengthsMm.isEmpty()
            && lengthsMm.stream().allMatch(length -> length > 0)
            && weights.stream().allMatch(weight -> weight >= 0)
            && (weights.isEmpty() || weights.size() == lengthsMm.size())
            && bandMm > 0;
    needs.also(
        readable && !possible(segments(lengthsMm, weights), bandMm),
        Problem.refuse(
            "marks.weights",
            Place.field("weights"),
            weights.stream().map(SegmentMarks::n).collect(Collectors.joining("; ")),
            "1; 2; 1"));
    return needs.then(() -> work(segments(lengthsMm, weights), bandMm));
  }

  private static List<Segment> segments(List<Double> lengths, List<Double> weights) {
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < lengths.size(); i++) {
      segments.add(new Segment(lengths.get(i), weights.isEmpty() ? 1 : weights.get(i)));
    }
    return segments;
  }

  /** False when a segment would get no band at all, or when nothing may be shortened. */
  private static boolean possible(List<Segment> segments, double band) {
    return parts(segments, band).stream().allMatch(part -> part > 0 && Double.isFinite(part));
  }

  private static Working work(List<Segment> segments, double band) {
    double whole = segments.stream().mapToDouble(Segment::lengthMm).sum();
    double weighted = segments.stream().mapToDouble(s -> s.lengthMm() * s.weight()).sum();
    double shortening = shortening(segments, band);
    List<Double> parts = parts(segments, band);
    WorkingBuilder board =
        Working.named("segment-marks", Message.of("garment.segments.title"))
            .step(
                Message.of("garment.segments.step-shortening"),
                "λ = (Σ L − b) ÷ Σ (k × L)",
                "(%s − %s) ÷ %s = %s"
                    .formatted(n(whole), n(band), n(weighted), Show.fixed(shortening, 4)));
    double at = 0;
    for (int i = 0; i < parts.size(); i++) {
      Segment segment = segments.get(i);
      at += parts.get(i);
      board.step(
          Message.of("garment.segments.step-part", Integer.toString(i + 1)),
          "b_i = L × (1 − λ × k); mark at Σ b_i",
          "%s × (1 − %s × %s) = %s; mark at %s"
              .formatted(
                  n(segment.lengthMm()),
                  Show.fixed(shortening, 4),
                  n(segment.weight()),
                  Show.mm(parts.get(i)),
                  Show.mm(at)));
    }
    return board
        .result(Measured.of(at, Unit.MM))
        .assume(Message.of("garment.assume.marks-after-join"))
        .assume(Message.of("garment.assume.segment-weights"))
        .source(Source.Kind.DEFINITION, "the parts must make up the band")
        .source(Source.Kind.COMMON_PRACTICE, "deep and V necks are marked by segments")
        .says(Message.of("garment.segments.says", Integer.toString(parts.size()), Show.mm(at)));
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
