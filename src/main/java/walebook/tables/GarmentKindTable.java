package walebook.tables;

import java.util.Arrays;
import java.util.List;
import walebook.garment.GarmentCaution;
import walebook.garment.GarmentKind;
import walebook.garment.Girth;
import walebook.garment.KindOpening;
import walebook.garment.OpeningEdge;
import walebook.garment.Wear;

/** The table of garment kinds; an opening is written {@code neckline:head}. */
final class GarmentKindTable {
  static final CsvTable<GarmentKind> GARMENT_KINDS =
      new CsvTable<>(
          "garment-kinds.csv",
          List.of(
              "key", "name", "fit", "wear", "margin", "girths", "openings", "cautions", "source"),
          row ->
              new GarmentKind(
                  row.text("key"),
                  row.text("name"),
                  row.text("fit"),
                  GarmentTables.word(row, "wear", Wear.values(), Wear::key),
                  row.text("margin"),
                  girths(row),
                  openings(row),
                  cautions(row),
                  row.text("source")));

  private GarmentKindTable() {}

  private static List<Girth> girths(TableRow row) {
    return row.texts("girths", ";").stream().map(word -> girth(row, "girths", word)).toList();
  }

  private static Girth girth(TableRow row, String column, String word) {
    return GarmentTables.named(row, column, word, Girth.values(), Girth::key);
  }

  private static List<KindOpening> openings(TableRow row) {
    return row.texts("openings", ";").stream().map(text -> opening(row, text)).toList();
  }

  private static KindOpening opening(TableRow row, String text) {
    String[] parts = text.split(":", 2);
    if (parts.length < 2) {
      row.refuse("table.word", "openings", text, "neckline:head");
      throw new IllegalArgumentException("no opening: " + text);
    }
    return new KindOpening(
        GarmentTables.named(
            row, "openings", parts[0].strip(), OpeningEdge.values(), OpeningEdge::key),
        girth(row, "openings", parts[1].strip()));
  }

  private static List<GarmentCaution> cautions(TableRow row) {
    return Arrays.stream(row.textOrEmpty("cautions").split(";"))
        .map(String::strip)
        .filter(word -> !word.isEmpty())
        .map(
            word ->
                GarmentTables.named(
                    row, "cautions", word, GarmentCaution.values(), GarmentCaution::key))
        .toList();
  }
}
