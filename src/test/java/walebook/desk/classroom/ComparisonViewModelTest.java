package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.compare.CompareBySetting;
import walebook.compare.Comparison;
import walebook.compare.Factor;
import walebook.compare.MadeClass;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.words.Words;

class ComparisonViewModelTest {
  @TempDir Path folder;

  private static ComparisonViewModel model(Session session) {
    return model(new FiltersViewModel(session));
  }

  private static ComparisonViewModel model(FiltersViewModel filters) {
    ComparisonViewModel model = new ComparisonViewModel(filters);
    model.asking().shown(true);
    return model;
  }

  private static ComparisonViewModel.Found found(ComparisonViewModel model) {
    return Objects.requireNonNull(model.foundProperty().get());
  }

  private static void pieces(Classroom room, double width, int gave, int held) {
    for (int i = 0; i < gave + held; i++) {
      SeamEnd end = i < gave ? SeamEnd.GAVE : SeamEnd.HELD;
      room.book
          .pieces()
          .add(
              room.piece(
                  i % 2 == 0 ? room.first.id() : room.second.id(),
                  width,
                  List.of(new PullReading(1, end, 130 + i)),
                  List.of(),
                  null));
    }
  }

  @Test
  void heldAndGaveAreCountedApartAndOnlyWhatGaveHasAMedian() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      pieces(room, 1.5, 3, 0);
      pieces(room, 2.5, 1, 2);
      ComparisonViewModel model = model(Sessions.of(room));
      assertThat(model.rows())
          .extracting(ComparedRow::setting)
          .containsExactly("width 1.5", "width 2.5");
      ComparedRow wide = model.rows().get(1);
      assertThat(wide.found().held()).isEqualTo(2);
      assertThat(wide.found().gave()).isEqualTo(1);
      // 130 mm on a gauge of 100 mm is 30 % by definition; the held 131 and 132 stay out of it.
      assertThat(Objects.requireNonNull(wide.found().stretchOfGave()).median()).isEqualTo(30);
      var plot = Objects.requireNonNull(found(model).plot().plot());
      assertThat(plot.rows().get(0).median()).isNotNull();
      assertThat(plot.rows().get(1).median()).isNull();
    }
  }

  @Test
  void onePieceAloneSpeaksForItselfOnly() {
    try (Classroom room = Classroom.in(folder.resolve("one.walebook"))) {
      pieces(room, 1.5, 1, 0);
      assertThat(found(model(Sessions.of(room))).says().get(0))
          .endsWith(
              "one piece was pulled, and it gave. One piece can’t tell how the next will come"
                  + " out.");
    }
  }

  @Test
  void aSmallDifferenceIsCalledLuckAndALargeOneIsNot() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      pieces(room, 1.5, 3, 0);
      pieces(room, 2.5, 1, 2);
      Session session = Sessions.of(room);
      ComparisonViewModel model = model(session);
      assertThat(found(model).says().get(0)).contains("luck alone could");
      pieces(room, 1.5, 9, 0);
      pieces(room, 2.5, 0, 9);
      session.changed();
      // Fisher's exact p of 11 of 12 against 0 of 12 is about 0.00001 (hypergeometric, by hand:
      // 12 / C(24, 11) and its like are the only tables as unlikely).
      assertThat(found(model).says().get(0)).contains("Luck alone would seldom");
    }
  }

  @Test
  void aVerdictOnLuckSaysOfHowManyPairsTheTwoWerePicked() {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      pieces(room, 1.5, 3, 0);
      pieces(room, 2.5, 1, 2);
      Session session = Sessions.of(room);
      ComparisonViewModel model = model(session);
      assertThat(found(model).says().get(0)).doesNotContain("pairs");
      pieces(room, 3.5, 0, 3);
      session.changed();
      // Three settings make three pairs.
      assertThat(found(model).says().get(0))
          .contains("Picked out of 3 pairs of settings", "so many pairs");
    }
  }

  @Test
  void clothsThatStandTogetherAreSaidToDoSo() {
    MadeClass made = new MadeClass().gave("Ada", 1, 40).onCloth("Soft rib").held("Ada", 3, 90);
    assertThat(says(made, List.of(Factor.WIDTH)))
        .anyMatch(each -> each.startsWith("Pieces on 2 cloths stand together"));
    assertThat(says(made, List.of(Factor.CLOTH, Factor.WIDTH)))
        .noneMatch(each -> each.startsWith("Pieces on 2 cloths"))
        .contains(
            "No two settings of one cloth were pulled, so none is compared with another here.");
  }

  private static List<String> says(MadeClass made, List<Factor> factors) {
    Comparison found =
        CompareBySetting.ofLines(made.lines(), factors, MadeClass.stretches(), made.names());
    return WhatWasFound.of(found, row -> String.join(" ", row.levels())).stream()
        .map(Words.english()::say)
        .toList();
  }

  @Test
  void factorsLessonAndClothNarrowTheQuestion() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      pieces(room, 1.5, 2, 0);
      pieces(room, 2.5, 2, 0);
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      ComparisonViewModel model = model(filters);
      filters.tellApart(Factor.WIDTH, false);
      assertThat(model.rows()).extracting(ComparedRow::setting).containsExactly("all pieces");
      filters.tellApart(Factor.STUDENT, true);
      assertThat(model.rows())
          .extracting(ComparedRow::setting)
          .containsExactly("Ada Pier", "Bo Quay");
      assertThat(filters.cloths()).extracting(Choice::name).contains("Grey jersey");
      filters.clothProperty().set(filters.cloths().get(1));
      assertThat(found(model).pieces()).isEqualTo(4);
    }
  }

  @Test
  void theBoardShowsAliasesForNames() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      pieces(room, 2.5, 4, 0);
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      ComparisonViewModel model = model(filters);
      filters.tellApart(Factor.STUDENT, true);
      List<ComparedRow> shown = new ArrayList<>();
      model.asking().forBoard(board -> shown.addAll(board.rows()));
      assertThat(shown).extracting(ComparedRow::setting).containsExactly("S01", "S02");
    }
  }

  @Test
  void anOpenRowShowsItsPiecesAndAPieceOpensInItsPlace() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      pieces(room, 1.5, 1, 0);
      pieces(room, 2.5, 1, 0);
      Session session = Sessions.of(room);
      ComparisonViewModel model = model(session);
      model.open(model.rows().get(1));
      session.changed();
      ComparedRow open = Objects.requireNonNull(model.openProperty().get());
      assertThat(open.setting()).isEqualTo("width 2.5");
      var piece = open.found().results().get(0);
      model.openPiece(piece.pieceId());
      assertThat(session.wishProperty().get())
          .isEqualTo(new Wish("pieces", Wish.What.OPEN, piece.pieceId()));
    }
  }

  @Test
  void loggedAndPulledAreCountedApart() {
    try (Classroom room = Classroom.in(folder.resolve("g.walebook"))) {
      pieces(room, 1.5, 2, 1);
      room.book.pieces().add(room.piece(room.first.id(), 1.5, List.of(), List.of(), null));
      ComparisonViewModel.Found found = found(model(Sessions.of(room)));
      assertThat(found.pieces()).isEqualTo(4);
      assertThat(found.pulled()).isEqualTo(3);
    }
  }
}
