package walebook.act.gather;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.book.gather.Choice;
import walebook.book.gather.Conflict;
import walebook.record.Priced;

/** Prices of another book come along; the same thing at two prices is asked about. */
class GatherPricesTest {
  private static final Priced LABELS = Priced.of("Labels", false);
  private static final Priced TAPE = Priced.of("Seam tape", true);

  @TempDir Path folder;
  private Path tutor;
  private Path other;
  private Priced cloth;

  @BeforeEach
  void make() throws Exception {
    tutor = folder.resolve("tutor.walebook");
    try (Classroom room = Classroom.in(tutor)) {
      cloth = Priced.metreOf(room.cloth.id());
    }
    other = Hall.copy(tutor, "other.walebook");
  }

  @Test
  void whatOnlyTheOtherPricedComesAndWhatBothPricedIsAsked() {
    Hall.work(
        tutor,
        book -> {
          book.kitPrices().keep(LABELS, 0.1);
          book.kitPrices().keep(cloth, 8.5);
        });
    Hall.work(
        other,
        book -> {
          book.kitPrices().keep(LABELS, 0.2);
          book.kitPrices().keep(cloth, 8.5);
          book.kitPrices().keep(TAPE, 0.4);
        });
    assertThat(Hall.gather(tutor, other).books().get(0).conflicts()).isEqualTo(1);
    Hall.work(
        tutor,
        book -> {
          assertThat(book.kitPrices().all()).isEqualTo(Map.of(LABELS, 0.1, cloth, 8.5, TAPE, 0.4));
          DecideConflicts decide = new DecideConflicts(book);
          List<Conflict> open = decide.open();
          assertThat(open).extracting(Conflict::title).containsExactly("Labels");
          assertThat(open.get(0).fields())
              .containsExactly(
                  new Conflict.Field(
                      "price",
                      List.of(List.of(new Conflict.Value("kit_price", "price", "0.1"))),
                      List.of(List.of(new Conflict.Value("kit_price", "price", "0.2")))));
          decide.decide(open.get(0).id(), Choice.THEIRS, Hall.TUTOR);
          assertThat(book.kitPrices().all()).containsEntry(LABELS, 0.2);
        });
    assertThat(Hall.gather(tutor, other).books().get(0).conflicts()).as("not asked twice").isZero();
  }
}
