package walebook.act.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.cloth.ClothCalculations;
import walebook.garment.GarmentCalculations;
import walebook.seam.SeamCalculations;
import walebook.tables.SharedTables;
import walebook.words.Words;
import walebook.working.Calculation;

class AllCalculationsTest {
  private final SharedTables tables = SharedTables.read();

  @Test
  void everyCalculationStandsInOneGroup() {
    List<String> names = AllCalculations.list(tables).stream().map(Calculation::name).toList();
    assertThat(names).doesNotHaveDuplicates();
    assertThat(names)
        .containsAll(names(ClothCalculations.all(tables.balanceBands())))
        .containsAll(names(SeamCalculations.all(tables.seamRows())))
        .containsAll(names(GarmentCalculations.all(tables.garment())));
    assertThat(AllCalculations.grouped(tables)).containsOnlyKeys(CheckGroup.values());
  }

  @Test
  void everyGroupIsNamed() {
    Words words = Words.english();
    for (CheckGroup group : CheckGroup.values()) {
      assertThat(words.has(group.sayKey())).as(group.name()).isTrue();
    }
  }

  private static List<String> names(List<Calculation> calculations) {
    return calculations.stream().map(Calculation::name).toList();
  }
}
