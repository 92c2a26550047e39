package walebook.seam;

import static walebook.working.Input.Kind.LENGTH;
import static walebook.working.Input.Kind.NUMBER;
import static walebook.working.Input.Kind.PERCENT;
import static walebook.working.Input.Kind.WHOLE;

import java.util.List;
import java.util.stream.Stream;
import walebook.working.Calculation;
import walebook.working.Input;
import walebook.working.Message;

/** The calculations on thread and needles that can be run by name. */
final class NotionCalculations {
  private static final Input SEAM =
      Input.usual("seam", LENGTH, "1000", Message.of("seam.input.seam"));
  private static final Input WASTE =
      Input.usual("waste", PERCENT, "15", Message.of("seam.input.waste"));

  private NotionCalculations() {}

  static List<Calculation> all(SeamRows rows) {
    return List.of(thread(rows), unravelled(), needle(rows), needleSize(), olderNeedle());
  }

  private static Calculation thread(SeamRows rows) {
    List<String> types =
        Stream.concat(
                Stream.of("301", "304", "401", "504", "101"),
                rows.ratios().stream().map(ThreadRatio::stitchType))
            .distinct()
            .toList();
    return new Calculation(
        "thread-use",
        Message.of("seam.thread.title"),
        List.of(
            Input.choice("stitch", types, Message.of("seam.input.stitch")),
            Input.usual("thickness", LENGTH, "0.8", Message.of("seam.input.thickness")),
            Input.usual("length", LENGTH, "2.5", Message.of("seam.input.length")),
            Input.usual("width", LENGTH, "0", Message.of("seam.input.width")),
            SEAM,
            WASTE),
        given ->
            ThreadUse.of(
                given.word("stitch"),
                given.number("thickness"),
                given.number("length"),
                given.number("width"),
                given.number("seam"),
                given.number("waste"),
                rows.ratios()));
  }

  private static Calculation unravelled() {
    return new Calculation(
        "thread-unravelled",
        Message.of("seam.unravelled.title"),
        List.of(
            Input.usual("piece", LENGTH, "100", Message.of("seam.input.piece")),
            Input.required("needle-thread", LENGTH, Message.of("seam.input.needle-thread")),
            Input.required("under-thread", LENGTH, Message.of("seam.input.under-thread")),
            SEAM,
            WASTE),
        given ->
            UnravelledThread.of(
                given.number("piece"),
                given.number("needle-thread"),
                given.number("under-thread"),
                given.number("seam"),
                given.number("waste")));
  }

  private static Calculation needle(SeamRows rows) {
    List<String> structures =
        Stream.concat(
                Stream.of(NeedleAdvice.ANY), rows.needles().stream().map(NeedleAdvice::structure))
            .distinct()
            .toList();
    return new Calculation(
        "needle",
        Message.of("seam.needle.title"),
        List.of(
            Input.required("mass", NUMBER, Message.of("seam.input.mass")),
            Input.choice("structure", structures, Message.of("seam.input.structure")),
            Input.usual("elastane", PERCENT, "0", Message.of("seam.input.elastane"))),
        given ->
            NeedleChoice.of(
                given.number("mass"),
                given.word("structure"),
                given.number("elastane"),
                rows.needles()));
  }

  private static Calculation needleSize() {
    return new Calculation(
        "needle-size",
        Message.of("seam.needle-size.title"),
        List.of(Input.required("nm", WHOLE, Message.of("seam.input.nm"))),
        given -> NeedleNumbers.fromNm(given.whole("nm")));
  }

  private static Calculation olderNeedle() {
    return new Calculation(
        "needle-from-older",
        Message.of("seam.needle-size.title-older"),
        List.of(Input.required("older", WHOLE, Message.of("seam.input.older"))),
        given -> NeedleNumbers.fromOlder(given.whole("older")));
  }
}
