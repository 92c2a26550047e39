package walebook.tables;

import java.util.List;
import walebook.seam.GrowthBand;
import walebook.seam.NeedleAdvice;
import walebook.seam.NeedleSize;
import walebook.seam.StitchType;
import walebook.seam.ThreadRatio;
import walebook.working.Source;

/** The tables about stitches, thread and needles. */
final class SeamTables {
  static final List<String> MACHINES = List.of("sewing", "overlocker", "coverstitch", "other");

  static final CsvTable<StitchType> STITCH_TYPES =
      new CsvTable<>(
          "stitch-types.csv",
          List.of(
              "key",
              "number",
              "name",
              "machines",
              "needles",
              "threads",
              "has_width",
              "stretches",
              "steps_per_swing",
              "source"),
          SeamTables::stitchType);

  static final CsvTable<ThreadRatio> THREAD_RATIOS =
      new CsvTable<>(
          "thread-ratios.csv",
          List.of("key", "stitch_type", "ratio", "kind", "source"),
          row ->
              new ThreadRatio(
                  row.text("key"),
                  row.text("stitch_type"),
                  row.number("ratio"),
                  kind(row),
                  row.text("source")));

  static final CsvTable<NeedleSize> NEEDLE_SIZES =
      new CsvTable<>(
          "needle-sizes.csv",
          List.of("nm", "older", "source"),
          row -> new NeedleSize(row.whole("nm"), row.whole("older"), row.text("source")));

  static final CsvTable<NeedleAdvice> NEEDLE_ADVICE =
      new CsvTable<>(
          "needle-advice.csv",
          List.of(
              "key",
              "structure",
              "mass_from",
              "mass_below",
              "elastane_from",
              "elastane_below",
              "point",
              "nm_from",
              "nm_to",
              "reason",
              "source"),
          SeamTables::needleAdvice);

  static final CsvTable<GrowthBand> SEAM_GROWTH =
      BandTable.of("seam-growth-guide.csv", GrowthBand::new);

  private SeamTables() {}

  /** {@code published}, or else {@code common-practice}. */
  private static Source.Kind kind(TableRow row) {
    String word = row.text("kind");
    row.among(List.of(word), "kind", List.of("published", "common-practice"));
    return word.equals("published") ? Source.Kind.PUBLISHED : Source.Kind.COMMON_PRACTICE;
  }

  private static StitchType stitchType(TableRow row) {
    return new StitchType(
        row.text("key"),
        row.wholeOrNull("number"),
        row.text("name"),
        row.among(row.texts("machines", ";"), "machines", MACHINES),
        row.whole("needles"),
        row.whole("threads"),
        row.yes("has_width"),
        row.yes("stretches"),
        row.whole("steps_per_swing"),
        row.text("source"));
  }

  private static NeedleAdvice needleAdvice(TableRow row) {
    return new NeedleAdvice(
        row.text("key"),
        row.text("structure"),
        row.number("mass_from"),
        row.number("mass_below"),
        row.number("elastane_from"),
        row.number("elastane_below"),
        row.text("point"),
        row.whole("nm_from"),
        row.whole("nm_to"),
        row.text("reason"),
        row.text("source"));
  }
}
