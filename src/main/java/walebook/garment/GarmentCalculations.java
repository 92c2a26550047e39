package walebook.garment;

import java.util.List;
import java.util.stream.Stream;
import walebook.working.Calculation;

/** The calculations on garments that can be run by name. */
public final class GarmentCalculations {
  private GarmentCalculations() {}

  /** All of them, in the order a lesson takes them. */
  public static List<Calculation> all(GarmentRows rows) {
    return Stream.of(
            FitCalculations.all(rows),
            List.of(OpeningCalculation.of(rows)),
            AllowanceCalculations.all(rows),
            BandCalculations.all(rows),
            DraftCalculations.all())
        .flatMap(List::stream)
        .toList();
  }
}
