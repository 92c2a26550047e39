package walebook.desk.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.beans.property.SimpleStringProperty;
import org.junit.jupiter.api.Test;
import walebook.drawing.FaultKind;
import walebook.record.FaultPlace;
import walebook.record.FaultSeen;
import walebook.record.FaultWhen;
import walebook.tables.SharedTables;

class FaultsViewModelTest {
  private final SimpleStringProperty text = new SimpleStringProperty("");
  private final FaultsViewModel faults = new FaultsViewModel(SharedTables.read().faults(), text);

  @Test
  void everyPictureBelongsToAFaultOfTheTable() {
    assertThat(faults.pictured()).hasSize(FaultKind.values().length);
  }

  @Test
  void aChosenFaultIsInHandAndCanBeSaidMoreOf() {
    faults.choose("wavy-seam");
    faults.severity(3);
    faults.place(FaultPlace.CURVE);
    faults.when(FaultWhen.PRESSED);
    FaultSeen said = new FaultSeen("wavy-seam", FaultPlace.CURVE, 3, FaultWhen.PRESSED);
    assertThat(faults.seen()).containsExactly(said);
    assertThat(faults.inHandProperty().get()).isEqualTo(said);
    assertThat(text.get()).isEqualTo("wavy-seam,curve,3,pressed");
  }

  /** Common practice: shine comes from the iron, and a hem snaps as it is pulled. */
  @Test
  void aFaultBeginsWithTheTimeThatFitsIt() {
    faults.choose("press-marks");
    faults.choose("hem-snaps");
    faults.choose("seam-growth");
    faults.choose("hem-wavy-washed");
    faults.choose("skipped-stitches");
    assertThat(faults.seen())
        .extracting(FaultSeen::when)
        .containsExactly(
            FaultWhen.PRESSED,
            FaultWhen.STRETCHED,
            FaultWhen.STRETCHED,
            FaultWhen.WASHED,
            FaultWhen.SEWN);
  }

  @Test
  void choosingTwiceTakesItInHandAndRemovingTakesItOut() {
    faults.choose("wavy-seam");
    faults.choose("ladders");
    faults.choose("wavy-seam");
    assertThat(faults.seen()).hasSize(2);
    faults.remove(faults.seen().get(0));
    assertThat(faults.isSeen("wavy-seam")).isFalse();
    assertThat(faults.inHandProperty().get()).isNull();
    assertThat(text.get()).startsWith("ladders,");
  }

  @Test
  void aTextFromADraftBecomesChosenFaults() {
    text.set("tunnelling,start,1,sewn");
    assertThat(faults.seen())
        .containsExactly(new FaultSeen("tunnelling", FaultPlace.START, 1, FaultWhen.SEWN));
    text.set("");
    assertThat(faults.seen()).isEmpty();
  }

  @Test
  void namesAreShownWithoutTheirExplanation() {
    assertThat(faults.name("popped-stitches")).isEqualTo("popped stitches");
  }
}
