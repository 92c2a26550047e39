package walebook.desk.classroom;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.compare.Factor;
import walebook.compare.Outcome;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.drawing.ScatterBand;
import walebook.record.PullReading;
import walebook.record.SeamEnd;

class FairViewModelTest {
  @TempDir Path folder;

  private static void pieces(Classroom room, double width, double endMm) {
    for (int i = 0; i < 4; i++) {
      room.book
          .pieces()
          .add(
              room.piece(
                  i % 2 == 0 ? room.first.id() : room.second.id(),
                  width,
                  List.of(new PullReading(1, SeamEnd.GAVE, endMm + i)),
                  List.of(),
                  null));
    }
  }

  private static void held(Classroom room, double width, double... endsMm) {
    for (double end : endsMm) {
      room.book
          .pieces()
          .add(
              room.piece(
                  room.first.id(),
                  width,
                  List.of(new PullReading(1, SeamEnd.HELD, end)),
                  List.of(),
                  null));
    }
  }

  /** What held stretches furthest of all, so it must not look empty. */
  @Test
  void whereMostHeldTheCellSaysHowFarAtLeast() {
    try (Classroom room = Classroom.in(folder.resolve("h.walebook"))) {
      pieces(room, 1.5, 130);
      pieces(room, 2.5, 160);
      held(room, 2.5, 190);
      held(room, 3.5, 180, 185, 190);
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      filters.outcomeProperty().set(Outcome.SEAM_STRETCH);
      FairViewModel model = new FairViewModel(filters);
      model.asking().shown(true);
      // Alone: 30 to 33 %. Half of five gave by 62 %. All three held, the middle one to 85 %.
      assertThat(found(model).rows())
          .extracting(FairFound.Row::raw, FairFound.Row::middle)
          .containsExactly(
              tuple("31.5", "31.5"),
              tuple("held 1/5", "half by 62.0"),
              tuple("held 3/3", "at least 85.0"));
    }
  }

  /** What stretches the axes is said in a sentence, and is not praised below. */
  @Test
  void aSlipOfThePenIsSaidToCountUntilSomebodyLooked() {
    try (Classroom room = Classroom.in(folder.resolve("s.walebook"))) {
      pieces(room, 1.5, 130);
      pieces(room, 1.5, 134);
      pieces(room, 2.5, 136);
      held(room, 1.5, 132);
      room.book
          .pieces()
          .add(
              room.piece(
                  room.first.id(),
                  1.5,
                  List.of(new PullReading(1, SeamEnd.GAVE, 331)),
                  List.of(),
                  null));
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      filters.outcomeProperty().set(Outcome.SEAM_STRETCH);
      FairViewModel model = new FairViewModel(filters);
      model.asking().shown(true);
      FairFound found = found(model);
      assertThat(found.odd()).extracting(each -> each.dot().value()).containsExactly(231.0);
      assertThat(found.best()).noneMatch(each -> each.dot().value() == 231.0);
      assertThat(found.says().get(found.says().size() - 1))
          .startsWith("Odd, and nobody has looked at it yet: ");
    }
  }

  @Test
  void noPIsNought() {
    assertThat(FairViewModel.chance(0.0000004)).isEqualTo("< 0.001");
    assertThat(FairViewModel.chance(0.0014)).isEqualTo("0.001");
    assertThat(FairViewModel.chance(null)).isEqualTo("–");
  }

  private static FairFound found(FairViewModel model) {
    return requireNonNull(model.foundProperty().get());
  }

  @Test
  void rawAndAdjustedStandBesideHowManyAndWhatMattersIsTakenIn() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      pieces(room, 1.5, 130);
      pieces(room, 2.5, 160);
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      FairViewModel model = new FairViewModel(filters);
      assertThat(model.foundProperty().get()).isNull();
      model.asking().shown(true);
      filters.outcomeProperty().set(Outcome.SEAM_STRETCH);
      // Mean of 30, 31, 32, 33 %; both students sewed both widths, so adjusting changes nothing.
      FairFound.Row narrow = found(model).rows().get(0);
      assertThat(narrow.raw()).isEqualTo("31.5");
      assertThat(narrow.middle()).isEqualTo("31.5");
      assertThat(narrow.found().students()).isEqualTo(2);
      filters.matters().textProperty().set("none");
      filters.matters().settle();
      assertThat(filters.matters().readingProperty().get().problem()).isNotNull();
      assertThat(found(model).comparison().question().matters()).isNull();
      filters.matters().textProperty().set("5");
      assertThat(filters.matters().readingProperty().get().problem()).isNull();
      assertThat(found(model).comparison().question().matters()).isEqualTo(5);
      assertThat(found(model).table(FairTables.header(model.words())).get(1))
          .contains("4", "2", "31.5");
    }
  }

  @Test
  void twoFactorsStandEachAloneAndAgainstEachOther() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      pieces(room, 1.5, 130);
      pieces(room, 2.5, 160);
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      filters.outcomeProperty().set(Outcome.SEAM_STRETCH);
      filters.tellApart(Factor.STUDENT, true);
      FairViewModel model = new FairViewModel(filters);
      model.asking().shown(true);
      assertThat(requireNonNull(found(model).single()).panels()).hasSize(2);
      assertThat(FairTables.grids(model.words(), requireNonNull(found(model).grids())))
          .containsExactly(
              List.of("width by student"),
              List.of("", "Ada Pier", "n", "Bo Quay", "n"),
              // First: 30 and 32 %, second: 31 and 33 %; then 30 points more.
              List.of("width 1.5", "31.0", "2", "32.0", "2"),
              List.of("width 2.5", "61.0", "2", "62.0", "2"));
    }
  }

  @Test
  void pValuesStandOnlyWhereTheyAreAskedFor() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      pieces(room, 1.5, 130);
      pieces(room, 2.5, 160);
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      FairViewModel model = new FairViewModel(filters);
      model.asking().shown(true);
      assertThat(found(model).pValues()).isFalse();
      filters.pValuesProperty().set(true);
      assertThat(found(model).pValues()).isTrue();
    }
  }

  @Test
  void theBestPieceOpensInItsPlace() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      pieces(room, 1.5, 130);
      pieces(room, 2.5, 160);
      Session session = Sessions.of(room);
      FiltersViewModel filters = new FiltersViewModel(session);
      filters.outcomeProperty().set(Outcome.SEAM_STRETCH);
      FairViewModel model = new FairViewModel(filters);
      model.asking().shown(true);
      var best = found(model).best().get(0).dot();
      assertThat(best.value()).isEqualTo(63);
      model.openPiece(best.pieceId());
      assertThat(session.wishProperty().get())
          .isEqualTo(new Wish("pieces", Wish.What.OPEN, best.pieceId()));
    }
  }

  @Test
  void anOutcomeStandsAgainstANumberWithTheLineThroughThePieces() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      pieces(room, 1, 120);
      pieces(room, 2, 130);
      pieces(room, 3, 140);
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      filters.outcomeProperty().set(Outcome.SEAM_STRETCH);
      filters.tellApart(Factor.STUDENT, true);
      FairViewModel model = new FairViewModel(filters);
      model.asking().shown(true);
      ScatterBand plot = found(model).against().get(0).plot();
      assertThat(plot.points()).hasSize(12);
      // Ten points more for each step by construction; means 21.5, 31.5 and 41.5.
      assertThat(plot.band().get(0).middle()).isCloseTo(21.5, within(1e-9));
      assertThat(plot.band().get(plot.band().size() - 1).middle()).isCloseTo(41.5, within(1e-9));
      assertThat(plot.band().get(0).low()).isLessThan(21.5);
    }
  }

  @Test
  void theBoardShowsNoNameWhereStudentsAreToldApart() {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      pieces(room, 1.5, 130);
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      filters.outcomeProperty().set(Outcome.SEAM_STRETCH);
      filters.tellApart(Factor.STUDENT, true);
      FairViewModel model = new FairViewModel(filters);
      List<FairFound> large = new ArrayList<>();
      model.asking().forBoard(large::add);
      assertThat(large.get(0).says().toString() + large.get(0).plot())
          .contains("S01")
          .doesNotContain("Ada")
          .doesNotContain("Bo Quay");
    }
  }

  @Test
  void anIntervalOpenAtOneEndSaysWhichEndIsKnown() {
    assertThat(FairViewModel.limits(1.0, 2.0)).isEqualTo("1.0 … 2.0");
    assertThat(FairViewModel.limits(44.9, null)).isEqualTo("≥ 44.9");
    assertThat(FairViewModel.limits(null, -36.4)).isEqualTo("≤ −36.4");
    assertThat(FairViewModel.limits(null, null)).isEqualTo("–");
  }
}
