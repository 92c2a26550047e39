package walebook.tables;

import java.util.ArrayList;
import java.util.List;
import walebook.cloth.BalanceBand;
import walebook.cloth.FabricKind;
import walebook.cloth.RecoveryBand;
import walebook.garment.GarmentRows;
import walebook.seam.Fault;
import walebook.seam.GrowthBand;
import walebook.seam.NeedleAdvice;
import walebook.seam.NeedleSize;
import walebook.seam.SeamRows;
import walebook.seam.StitchType;
import walebook.seam.ThreadRatio;

/** All reference tables that come with the program, read and checked. */
public record SharedTables(
    List<StitchType> stitchTypes,
    List<NeedleAdvice> needleAdvice,
    List<NeedleSize> needleSizes,
    List<ThreadRatio> threadRatios,
    List<FabricKind> fabricKinds,
    List<Fault> faults,
    List<RecoveryBand> recoveryBands,
    List<BalanceBand> balanceBands,
    List<GrowthBand> seamGrowth,
    List<CautionRow> cautions,
    GarmentRows garment) {

  private static final CsvTable<CautionRow> CAUTIONS =
      new CsvTable<>(
          "cautions.csv",
          List.of("key", "where", "says", "source"),
          row ->
              new CautionRow(
                  row.text("key"), row.text("where"), row.text("says"), row.text("source")));

  public SharedTables {
    stitchTypes = List.copyOf(stitchTypes);
    needleAdvice = List.copyOf(needleAdvice);
    needleSizes = List.copyOf(needleSizes);
    threadRatios = List.copyOf(threadRatios);
    fabricKinds = List.copyOf(fabricKinds);
    faults = List.copyOf(faults);
    recoveryBands = List.copyOf(recoveryBands);
    balanceBands = List.copyOf(balanceBands);
    seamGrowth = List.copyOf(seamGrowth);
    cautions = List.copyOf(cautions);
  }

  /**
   * Reads them all.
   *
   * @throws IllegalStateException when one has problems, which is a mistake of the program's own
   */
  public static SharedTables read() {
    return new SharedTables(
        SeamTables.STITCH_TYPES.bundled(),
        SeamTables.NEEDLE_ADVICE.bundled(),
        SeamTables.NEEDLE_SIZES.bundled(),
        SeamTables.THREAD_RATIOS.bundled(),
        ClothTables.FABRIC_KINDS.bundled(),
        FaultTable.FAULTS.bundled(),
        ClothTables.RECOVERY_BANDS.bundled(),
        ClothTables.BALANCE_BANDS.bundled(),
        SeamTables.SEAM_GROWTH.bundled(),
        CAUTIONS.bundled(),
        GarmentTables.bundled());
  }

  /** Every table of the program, for a check that each file of the folder is one. */
  static List<CsvTable<?>> all() {
    List<CsvTable<?>> all = new ArrayList<>(GarmentTables.all());
    all.addAll(
        List.of(
            SeamTables.STITCH_TYPES,
            SeamTables.NEEDLE_ADVICE,
            SeamTables.NEEDLE_SIZES,
            SeamTables.THREAD_RATIOS,
            ClothTables.FABRIC_KINDS,
            FaultTable.FAULTS,
            ClothTables.RECOVERY_BANDS,
            ClothTables.BALANCE_BANDS,
            SeamTables.SEAM_GROWTH,
            CAUTIONS));
    return List.copyOf(all);
  }

  /** The rows that the calculations on seams go by. */
  public SeamRows seamRows() {
    return new SeamRows(threadRatios, needleAdvice, seamGrowth);
  }
}
