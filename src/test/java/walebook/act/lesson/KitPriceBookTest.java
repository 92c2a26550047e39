package walebook.act.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.kit.Kit;
import walebook.lesson.LessonPack;
import walebook.lesson.Packs;
import walebook.quantity.Unit;
import walebook.record.By;
import walebook.record.Priced;
import walebook.tables.SharedTables;

class KitPriceBookTest {
  private static final LessonPack SEAM = Packs.seam();

  @TempDir Path folder;

  private static KitTyped priced(String... prices) {
    return new KitTyped("12", "10", "", List.of("a=150 cm"), List.of("a=-5/-3"), List.of(prices));
  }

  /** 1.7 m of cloth, as in WorkOutKitTest, at 8.50 a metre are 14.45. */
  @Test
  void whatWasTypedOnceIsThereTheNextTime() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Map<String, UUID> cloths = Map.of("a", room.cloth.id());
      KitPriceBook prices = new KitPriceBook(room.book, SEAM, cloths);
      prices.keep(priced("a=8,50", "label=0.1"));
      assertThat(room.book.kitPrices().all())
          .containsOnly(
              Map.entry(Priced.metreOf(room.cloth.id()), 8.5),
              Map.entry(Priced.of("Labels", false), 0.1));
      Kit kit = work(prices.with(priced()));
      assertThat(kit.lines().get(0).cost()).isCloseTo(14.45, within(1e-9));
      assertThat(kit.cost()).isCloseTo(14.45 + 60 * 0.1, within(1e-9));
      assertThat(work(prices.with(priced("a=10"))).lines().get(0).cost())
          .as("what is typed outranks it")
          .isCloseTo(17, within(1e-9));
      assertThat(work(prices.with(priced("a="))).lines().get(0).cost()).isNull();
      prices.keep(priced("a="));
      assertThat(room.book.kitPrices().all()).containsOnlyKeys(Priced.of("Labels", false));
    }
  }

  @Test
  void aClothOfThePlanThatNoneOfTheRoomStandsForHasItsPriceByName() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      KitPriceBook prices = new KitPriceBook(room.book, SEAM, Map.of());
      prices.keep(priced("a=8.50"));
      assertThat(prices.known()).containsOnly(Map.entry("a", "8.5"));
      assertThat(new KitPriceBook(room.book, SEAM, Map.of("a", room.cloth.id())).known()).isEmpty();
    }
  }

  @Test
  void nothingIsKeptOfWhatCannotBeReadAndNothingIsWrittenTwice() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      KitPriceBook prices = new KitPriceBook(room.book, SEAM, Map.of());
      prices.keep(priced("a=8.50", "labels=-1"));
      assertThat(room.book.kitPrices().all()).isEmpty();
      prices.keep(priced("a=8.50"));
      UUID step = Objects.requireNonNull(room.book.history().lastDone(null));
      prices.keep(priced("a=8.5"));
      assertThat(room.book.history().lastDone(null)).isEqualTo(step);
    }
  }

  /** A price is in the history like all else: what it was is found, and a change is taken back. */
  @Test
  void aChangedPriceIsTakenBack() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      Priced thing = Priced.of("Labels", false);
      room.book.kitPrices().keep(thing, 0.1);
      room.book.kitPrices().keep(thing, 0.2);
      UUID step = Objects.requireNonNull(room.book.history().lastDone(null));
      room.book.history().undo(step, By.NOBODY);
      assertThat(room.book.kitPrices().all()).containsOnly(Map.entry(thing, 0.1));
    }
  }

  private static Kit work(KitTyped typed) {
    return WorkOutKit.of(SEAM, Map.of(), typed, SharedTables.read(), Unit.MM, 1).value();
  }
}
