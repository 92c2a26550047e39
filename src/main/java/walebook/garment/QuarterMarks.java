package walebook.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
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

/** Marks for even strain: band and opening divided alike, from the join of the ring on. */
public final class QuarterMarks {
  private QuarterMarks() {}

  /** The marks of so many equal parts; the last part ends where the first begins. */
  public static List<BandMark> of(double openingMm, double bandMm, int parts) {
    List<BandMark> marks = new ArrayList<>();
    for (int i = 0; i < parts; i++) {
      marks.add(new BandMark(openingMm * i / parts, bandMm * i / parts));
    }
    return List.copyOf(marks);
  }

  /**
   * Works out the marks.
   *
   * @param openingMm N, the opening on its seam line, over 0
   * @param bandMm b, the joined band, over 0
   * @param parts 4 for quarters, 8 for eighths; 2 to 16
   * @param shoulderMm from centre back to a shoulder seam along the opening; null when not asked
   */
  public static Answer<Working> worked(
      double openingMm, double bandMm, int parts, @Nullable Double shoulderMm) {
    GarmentNeeds needs =
        new GarmentNeeds()
            .girth("opening", openingMm)
            .positive("band-length", bandMm, "450 mm")
            .between("parts", parts, 2, 16);
    if (shoulderMm != null) {
      needs
          .positive("shoulder", shoulderMm, "90 mm")
          .also(
              shoulderMm >= openingMm / 2,
              Problem.refuse(
                  "marks.shoulder",
                  Place.field("shoulder"),
                  Show.mm(shoulderMm),
                  Show.mm(openingMm / 2)));
    }
    return needs.then(() -> work(openingMm, bandMm, parts, shoulderMm));
  }

  private static Working work(double opening, double band, int parts, @Nullable Double shoulder) {
    List<BandMark> marks = of(opening, band, parts);
    WorkingBuilder board =
        Working.named("quarter-marks", Message.of("garment.quarters.title"))
            .step(
                Message.of("garment.quarters.step-opening"),
                "N ÷ %s".formatted(parts),
                "%s ÷ %s = %s: %s"
                    .formatted(
                        n(opening),
                        parts,
                        Show.mm(opening / parts),
                        joined(marks.stream().map(BandMark::openingMm).toList())))
            .step(
                Message.of("garment.quarters.step-band"),
                "b ÷ %s".formatted(parts),
                "%s ÷ %s = %s: %s"
                    .formatted(
                        n(band),
                        parts,
                        Show.mm(band / parts),
                        joined(marks.stream().map(BandMark::bandMm).toList())))
            .result(Measured.of(band / parts, Unit.MM))
            .assume(Message.of("garment.assume.marks-after-join"))
            .source(Source.Kind.DEFINITION, "equal parts of both")
            .source(Source.Kind.COMMON_PRACTICE, "quarters on crew and shallow necks");
    if (shoulder == null) {
      return board.says(Message.of("garment.quarters.says", Show.mm(band / parts)));
    }
    double before = opening / 4 - shoulder;
    board.step(
        Message.of("garment.quarters.step-shoulder"),
        "N ÷ 4 − shoulder",
        "%s − %s = %s".formatted(n(opening / 4), n(shoulder), Show.mm(before)));
    String key = before >= 0 ? "garment.quarters.says-front" : "garment.quarters.says-behind";
    return board.says(Message.of(key, Show.mm(band / parts), Show.mm(Math.abs(before))));
  }

  private static String joined(List<Double> places) {
    return places.stream().map(QuarterMarks::n).collect(Collectors.joining(", "));
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
