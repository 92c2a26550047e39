package walebook.desk.classroom;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.book.open.SqliteFiles;
import walebook.compare.Outcome;
import walebook.desk.Sessions;
import walebook.record.Cloth;
import walebook.record.Edge;
import walebook.record.SchoolClass;
import walebook.record.SeamEnd;
import walebook.record.Term;
import walebook.record.TestPiece;
import walebook.record.Whose;

class TermsViewModelTest {
  @TempDir Path folder;

  private static void piece(Classroom room, UUID inClass, double endMm) {
    TestPiece made = room.piece(SeamEnd.GAVE, endMm);
    Whose whose = new Whose(inClass, room.first.id(), null, null, made.whose().sewnOn());
    room.book.pieces().add(made.with(whose));
  }

  @Test
  void everyClassStandsInItsTermWithItsOwnMeanTheEarliestFirst() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Term spring =
          new Term(
              Ids.next(),
              "Spring",
              LocalDate.of(2026, 2, 1),
              LocalDate.of(2026, 5, 1),
              Classroom.FRESH);
      SchoolClass before =
          new SchoolClass(Ids.next(), spring.id(), null, "Tuesday", "", Classroom.FRESH);
      room.book.terms().add(spring);
      room.book.classes().add(before);
      piece(room, before.id(), 120);
      piece(room, before.id(), 130);
      piece(room, room.schoolClass.id(), 150);
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      filters.outcomeProperty().set(Outcome.SEAM_STRETCH);
      TermsViewModel model = new TermsViewModel(filters, new SqliteFiles());
      assertThat(model.foundProperty().get()).isNull();
      model.asking().shown(true);
      TermsViewModel.Known known = requireNonNull(model.foundProperty().get());
      assertThat(known.lines())
          .extracting(each -> each.term() + " " + each.pieces() + " " + each.mean())
          // 20 and 30 % in spring, 50 % in autumn.
          .containsExactly("Spring 2 25.0", "Autumn 1 50.0");
      assertThat(known.says()).isNotEmpty();
      assertThat(requireNonNull(known.plot()).rows().get(0).dots()).hasSize(3);
    }
  }

  @Test
  void anotherBookIsAskedTooUntilItIsLeftOut() {
    Path other = folder.resolve("other.walebook");
    try (Classroom there = Classroom.in(other)) {
      piece(there, there.schoolClass.id(), 170);
    }
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      piece(room, room.schoolClass.id(), 150);
      FiltersViewModel filters =
          new FiltersViewModel(Sessions.of(room.book, room.schoolClass, other));
      filters.outcomeProperty().set(Outcome.SEAM_STRETCH);
      TermsViewModel model = new TermsViewModel(filters, new SqliteFiles());
      model.asking().shown(true);
      model.alsoAsk();
      TermsViewModel.Known known = requireNonNull(model.foundProperty().get());
      assertThat(known.lines()).extracting(TermsViewModel.Line::mean).contains("50.0", "70.0");
      assertThat(known.troubles()).isEmpty();
      // The lock is given back: whoever wants to may open the other book.
      new SqliteFiles().open(other, Classroom.CLOCK).value().close();
      model.leaveOut(other);
      assertThat(requireNonNull(model.foundProperty().get()).lines()).hasSize(1);
    }
  }

  @Test
  void aBookThatCannotBeOpenedIsSaidAndTheRestIsAnswered() {
    Path own = folder.resolve("c.walebook");
    try (Classroom room = Classroom.in(own)) {
      piece(room, room.schoolClass.id(), 150);
      FiltersViewModel filters =
          new FiltersViewModel(Sessions.of(room.book, room.schoolClass, own));
      TermsViewModel model = new TermsViewModel(filters, new SqliteFiles());
      model.asking().shown(true);
      model.alsoAsk();
      TermsViewModel.Known known = requireNonNull(model.foundProperty().get());
      assertThat(known.troubles()).hasSize(1);
      assertThat(known.lines()).hasSize(1);
    }
  }

  /** Comparing within one machine is asked for in another part and not shown in this one. */
  @Test
  void noFilterIsObeyedThatIsNotShown() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      piece(room, room.schoolClass.id(), 150);
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      TermsViewModel model = new TermsViewModel(filters, new SqliteFiles());
      model.asking().shown(true);
      TermsViewModel.Known before = requireNonNull(model.foundProperty().get());
      filters.withinMachineProperty().set(true);
      assertThat(model.question().withinMachine()).isFalse();
      assertThat(requireNonNull(model.foundProperty().get()).says()).isEqualTo(before.says());
    }
  }

  @Test
  void oneStitchIsAskedAboutByItself() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      piece(room, room.schoolClass.id(), 150);
      TermsViewModel model =
          new TermsViewModel(new FiltersViewModel(Sessions.of(room)), new SqliteFiles());
      model.asking().shown(true);
      assertThat(model.stitches()).containsExactly(TermsViewModel.ANY, "Zigzag");
      model.stitchProperty().set("Zigzag");
      assertThat(requireNonNull(model.foundProperty().get()).lines()).hasSize(1);
      assertThat(model.stitchProperty().get()).isEqualTo("Zigzag");
    }
  }

  /** What is found is of the stitch that stands there, also where this cloth was not sewn so. */
  @Test
  void aStitchThatTheClothWasNotSewnWithStaysChosen() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      piece(room, room.schoolClass.id(), 150);
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      filters.outcomeProperty().set(Outcome.SEAM_STRETCH);
      TermsViewModel model = new TermsViewModel(filters, new SqliteFiles());
      model.asking().shown(true);
      String zigzag = model.stitches().get(1);
      model.stitchProperty().set(zigzag);
      assertThat(requireNonNull(model.foundProperty().get()).lines()).hasSize(1);
      Cloth other =
          new Cloth(
              Ids.next(),
              "Soft rib",
              "rib",
              "",
              null,
              null,
              null,
              null,
              Edge.UNKNOWN,
              "",
              false,
              Classroom.FRESH);
      room.book.cloths().add(other);
      filters.session().changed();
      filters.clothProperty().set(filters.cloths().get(2));
      assertThat(requireNonNull(model.foundProperty().get()).lines()).isEmpty();
      assertThat(model.stitchProperty().get()).isEqualTo(zigzag);
      assertThat(model.stitches()).containsExactly(TermsViewModel.ANY, zigzag);
      filters.clothProperty().set(filters.cloths().get(1));
      assertThat(requireNonNull(model.foundProperty().get()).lines()).hasSize(1);
      assertThat(model.stitches()).containsExactly(TermsViewModel.ANY, zigzag);
    }
  }
}
