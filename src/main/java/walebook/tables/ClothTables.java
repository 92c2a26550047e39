package walebook.tables;

import java.util.List;
import walebook.cloth.BalanceBand;
import walebook.cloth.FabricKind;
import walebook.cloth.RecoveryBand;

/** The tables about cloth. */
final class ClothTables {
  static final List<String> EDGES = List.of("lies", "curls", "ladders", "sheds", "frays");

  static final CsvTable<FabricKind> FABRIC_KINDS =
      new CsvTable<>(
          "fabric-kinds.csv",
          List.of(
              "key",
              "name",
              "structure",
              "mass_from",
              "mass_to",
              "course_from",
              "course_to",
              "wale_from",
              "wale_to",
              "edge",
              "source"),
          ClothTables::fabricKind);

  static final CsvTable<RecoveryBand> RECOVERY_BANDS =
      BandTable.of("recovery-bands.csv", RecoveryBand::new);

  static final CsvTable<BalanceBand> BALANCE_BANDS =
      new CsvTable<>(
          "balance-bands.csv",
          List.of(
              "key", "larger_from", "larger_below", "share_from", "share_below", "name", "source"),
          row ->
              new BalanceBand(
                  row.text("key"),
                  row.number("larger_from"),
                  row.number("larger_below"),
                  row.number("share_from"),
                  row.number("share_below"),
                  row.text("name"),
                  row.text("source")));

  private ClothTables() {}

  private static FabricKind fabricKind(TableRow row) {
    row.among(List.of(row.text("edge")), "edge", EDGES);
    return new FabricKind(
        row.text("key"),
        row.text("name"),
        row.text("structure"),
        row.number("mass_from"),
        row.number("mass_to"),
        row.number("course_from"),
        row.number("course_to"),
        row.number("wale_from"),
        row.number("wale_to"),
        row.text("edge"),
        row.text("source"));
  }
}
