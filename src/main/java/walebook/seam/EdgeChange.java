package walebook.seam;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.cloth.LengthChange;
import walebook.cloth.ReadTo;
import walebook.cloth.ReadingUncertainty;
import walebook.problem.Answer;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Band;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** How much sewing lengthened an edge, the number behind a wavy hem; before and after pressing. */
public final class EdgeChange {
  private EdgeChange() {}

  /**
   * Works out the edge's change.
   *
   * @param beforeMm between the marks before sewing, over 0
   * @param sewnMm after sewing
   * @param pressedMm after pressing; null when not read
   * @param readToMm what the lengths are read to
   * @param bands the guide
   * @return the working; its value is the change after pressing where that was read, else after
   *     sewing
   */
  public static Answer<Working> of(
      double beforeMm,
      double sewnMm,
      @Nullable Double pressedMm,
      double readToMm,
      List<GrowthBand> bands) {
    Needs needs =
        new Needs().positive("before", beforeMm, "100 mm").positive("sewn", sewnMm, "102 mm");
    if (pressedMm != null) {
      needs.positive("pressed", pressedMm, "101 mm");
    }
    needs.also(ReadTo.check("read-to", readToMm));
    if (needs.failed()) {
      return Answer.bad(needs.problems());
    }
    double sewn = LengthChange.percent(beforeMm, sewnMm);
    WorkingBuilder board =
        Working.named("edge-change", Message.of("seam.edge.title"))
            .step(
                Message.of("seam.edge.step-sewn"),
                "W = 100 × (sewn − before) ÷ before",
                LengthChange.inNumbers(beforeMm, sewnMm));
    if (pressedMm != null) {
      board.step(
          Message.of("seam.edge.step-pressed"),
          "W = 100 × (pressed − before) ÷ before",
          LengthChange.inNumbers(beforeMm, pressedMm));
    }
    double lastMm = pressedMm == null ? sewnMm : pressedMm;
    double last = LengthChange.percent(beforeMm, lastMm);
    LengthChange.uncertaintySteps(board, "W", beforeMm, lastMm, readToMm);
    double u = ReadingUncertainty.ofResolution(readToMm);
    GrowthBand band = Band.holding(bands, last);
    String key = pressedMm == null ? "seam.edge.says-sewn" : "seam.edge.says-pressed";
    return Answer.good(
        board
            .result(
                Measured.of(
                    last, Unit.PERCENT, ReadingUncertainty.ofChange(beforeMm, lastMm, u, u)))
            .assume(Message.of("seam.assume.edge-relaxed"))
            .source(Source.Kind.DEFINITION, "change of length in per cent of the length before")
            .source(Source.Kind.COMMON_PRACTICE, band.source())
            .says(
                Message.of(
                    key, Show.percent(last), band.name(), band.advice(), Show.percent(sewn))));
  }
}
