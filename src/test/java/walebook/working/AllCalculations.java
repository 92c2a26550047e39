package walebook.working;

import java.util.List;
import java.util.stream.Stream;
import walebook.cloth.ClothCalculations;
import walebook.garment.GarmentCalculations;
import walebook.seam.SeamCalculations;
import walebook.tables.SharedTables;

/** Every calculation that there is, with the program's own tables, for tests. */
public final class AllCalculations {
  private AllCalculations() {}

  public static List<Calculation> all() {
    SharedTables tables = SharedTables.read();
    return Stream.of(
            ClothCalculations.all(tables.balanceBands()),
            SeamCalculations.all(tables.seamRows()),
            GarmentCalculations.all(tables.garment()))
        .flatMap(List::stream)
        .toList();
  }
}
