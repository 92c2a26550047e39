package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import walebook.tables.CautionRow;
import walebook.tables.SharedTables;
import walebook.words.Words;
import walebook.working.Band;

class GarmentRowsTest {

  @Test
  void bandsLieEdgeToEdge() {
    edgeToEdge(Rows.ROWS.comfort());
    edgeToEdge(Rows.ROWS.bandFits());
    edgeToEdge(Rows.ROWS.fits().stream().filter(EaseFit::inPercent).toList());
    edgeToEdge(Rows.ROWS.fits().stream().filter(fit -> !fit.inPercent()).toList());
    for (BandRatio.Place place : BandRatio.Place.values()) {
      edgeToEdge(Rows.ROWS.bandRatios().stream().filter(row -> row.place() == place).toList());
    }
  }

  private static void edgeToEdge(List<? extends Band> bands) {
    List<? extends Band> sorted =
        bands.stream().sorted(Comparator.comparingDouble(Band::from)).toList();
    assertThat(sorted).hasSizeGreaterThan(1);
    for (int i = 1; i < sorted.size(); i++) {
      assertThat(sorted.get(i).from()).isEqualTo(sorted.get(i - 1).below());
    }
  }

  @Test
  void aStretchierBandIsNeverLonger() {
    // Common practice: the further a band's cloth stretches, the shorter it is cut.
    for (BandRatio.Place place : BandRatio.Place.values()) {
      List<BandRatio> rows =
          Rows.ROWS.bandRatios().stream()
              .filter(row -> row.place() == place)
              .sorted(Comparator.comparingDouble(Band::from))
              .toList();
      for (int i = 1; i < rows.size(); i++) {
        assertThat(rows.get(i).ratioTo()).isLessThanOrEqualTo(rows.get(i - 1).ratioTo());
        assertThat(rows.get(i).ratioFrom()).isLessThanOrEqualTo(rows.get(i - 1).ratioFrom());
      }
    }
  }

  @Test
  void kindsNameRowsThatAreThere() {
    Set<String> fits = Rows.ROWS.fits().stream().map(EaseFit::key).collect(Collectors.toSet());
    for (GarmentKind kind : Rows.ROWS.kinds()) {
      assertThat(fits).as(kind.key()).contains(kind.fit());
      assertThat(Rows.ROWS.margin(kind.margin())).isPositive();
      assertThat(kind.openings()).extracting(KindOpening::edge).doesNotHaveDuplicates();
    }
    assertThat(Rows.ROWS.kinds())
        .extracting(GarmentKind::key)
        .contains(
            "loose-top",
            "fitted-top",
            "base-layer",
            "leggings",
            "skirt-elastic",
            "pyjama-bottoms",
            "underwear",
            "hooded-sweatshirt");
  }

  @Test
  void childrensAndNightClothesAndElasticComeWithTheirCautions() {
    for (GarmentKind kind : Rows.ROWS.kinds()) {
      if (kind.key().startsWith("child")) {
        assertThat(kind.cautions()).contains(GarmentCaution.CORDS, GarmentCaution.CHILD_NECK);
      }
      if (kind.key().contains("nightwear") || kind.key().contains("pyjama")) {
        assertThat(kind.cautions()).contains(GarmentCaution.NIGHTWEAR);
      }
      if (kind.openings().stream().anyMatch(o -> o.edge() == OpeningEdge.WAIST_EDGE)) {
        assertThat(kind.cautions()).contains(GarmentCaution.ELASTIC);
      }
    }
  }

  @Test
  void everyCautionIsInTheTableAndEveryNameInTheBundle() {
    Words words = Words.english();
    Set<String> table =
        SharedTables.read().cautions().stream().map(CautionRow::key).collect(Collectors.toSet());
    for (GarmentCaution caution : GarmentCaution.values()) {
      assertThat(table).contains(caution.key());
      assertThat(words.has(caution.caution().says().key())).isTrue();
    }
    for (Girth girth : Girth.values()) {
      assertThat(words.has(girth.sayKey())).isTrue();
    }
    for (OpeningEdge edge : OpeningEdge.values()) {
      assertThat(words.has(edge.sayKey())).isTrue();
    }
    for (LinkKind link : LinkKind.values()) {
      assertThat(words.has(link.sayKey())).isTrue();
    }
  }
}
