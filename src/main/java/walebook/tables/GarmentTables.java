package walebook.tables;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import walebook.garment.BandFit;
import walebook.garment.BandRatio;
import walebook.garment.BodyGirth;
import walebook.garment.ComfortBand;
import walebook.garment.EaseFit;
import walebook.garment.GarmentRows;
import walebook.garment.Girth;
import walebook.garment.NeckShape;
import walebook.garment.OpeningMargin;
import walebook.garment.Wear;

/** The tables about garments and bodies. */
final class GarmentTables {
  static final CsvTable<ComfortBand> COMFORT_BANDS =
      new CsvTable<>(
          "comfort-bands.csv",
          List.of("key", "from", "below", "name", "advice", "wears", "source"),
          row ->
              new ComfortBand(
                  row.text("key"),
                  row.number("from"),
                  row.number("below"),
                  row.text("name"),
                  row.text("advice"),
                  wears(row),
                  row.text("source")));

  static final CsvTable<EaseFit> EASE_BY_FIT =
      new CsvTable<>(
          "ease-by-fit.csv",
          List.of("key", "in_percent", "from", "below", "name", "stretch_from", "advice", "source"),
          row ->
              new EaseFit(
                  row.text("key"),
                  row.yes("in_percent"),
                  row.number("from"),
                  row.number("below"),
                  row.text("name"),
                  row.number("stretch_from"),
                  row.text("advice"),
                  row.text("source")));

  static final CsvTable<BandRatio> BAND_RATIOS =
      new CsvTable<>(
          "band-ratios.csv",
          List.of("key", "place", "from", "below", "ratio_from", "ratio_to", "source"),
          row ->
              new BandRatio(
                  row.text("key"),
                  word(row, "place", BandRatio.Place.values(), BandRatio.Place::key),
                  row.number("from"),
                  row.number("below"),
                  row.number("ratio_from"),
                  row.number("ratio_to"),
                  row.text("source")));

  static final CsvTable<BandFit> BAND_FITS = BandTable.of("band-fits.csv", BandFit::new);

  static final CsvTable<NeckShape> NECK_SHAPES =
      new CsvTable<>(
          "neck-shapes.csv",
          List.of("key", "name", "turn", "source"),
          row ->
              new NeckShape(
                  row.text("key"), row.text("name"), row.number("turn"), row.text("source")));

  static final CsvTable<BodyGirth> BODY_GIRTHS =
      new CsvTable<>(
          "body-girths.csv",
          List.of("key", "girth", "group", "size", "from_mm", "below_mm", "source"),
          row ->
              new BodyGirth(
                  row.text("key"),
                  word(row, "girth", Girth.values(), Girth::key),
                  row.among(List.of(row.text("group")), "group", List.of("women", "men")).get(0),
                  row.text("size"),
                  row.number("from_mm"),
                  row.number("below_mm"),
                  row.text("source")));

  static final CsvTable<OpeningMargin> OPENING_MARGINS =
      new CsvTable<>(
          "opening-margins.csv",
          List.of("key", "name", "points", "source"),
          row ->
              new OpeningMargin(
                  row.text("key"), row.text("name"), row.number("points"), row.text("source")));

  private GarmentTables() {}

  static List<CsvTable<?>> all() {
    return List.of(
        COMFORT_BANDS,
        EASE_BY_FIT,
        BAND_RATIOS,
        BAND_FITS,
        NECK_SHAPES,
        BODY_GIRTHS,
        OPENING_MARGINS,
        GarmentKindTable.GARMENT_KINDS);
  }

  static GarmentRows bundled() {
    return new GarmentRows(
        COMFORT_BANDS.bundled(),
        EASE_BY_FIT.bundled(),
        BAND_RATIOS.bundled(),
        BAND_FITS.bundled(),
        NECK_SHAPES.bundled(),
        BODY_GIRTHS.bundled(),
        GarmentKindTable.GARMENT_KINDS.bundled(),
        OPENING_MARGINS.bundled());
  }

  private static Set<Wear> wears(TableRow row) {
    List<String> found = row.texts("wears", ";");
    if (found.equals(List.of("none"))) {
      return Set.of();
    }
    row.among(found, "wears", Arrays.stream(Wear.values()).map(Wear::key).toList());
    return found.stream().map(Wear::of).collect(Collectors.toSet());
  }

  /** The constant whose word stands in a cell; what is not among them becomes a problem. */
  static <T> T word(TableRow row, String column, T[] values, Function<T, String> key) {
    return named(row, column, row.text(column), values, key);
  }

  static <T> T named(
      TableRow row, String column, String found, T[] values, Function<T, String> key) {
    row.among(List.of(found), column, Arrays.stream(values).map(key).toList());
    return Arrays.stream(values)
        .filter(value -> key.apply(value).equals(found))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("not known: " + found));
  }
}
