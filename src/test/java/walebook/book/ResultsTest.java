package walebook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.MakeDemoBook;
import walebook.book.open.SqliteFiles;
import walebook.record.DoneLine;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.ResultLine;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.TestPiece;

/** The narrow lines say the same as the whole pieces, for a whole demo class. */
class ResultsTest {
  @TempDir Path folder;

  @Test
  void linesAreThoseOfTheWholePieces() {
    Path file = folder.resolve("demo.walebook");
    try (Book book = new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK).make(file, 3).value()) {
      SchoolClass in = book.classes().all().get(0);
      ResultFilter all = ResultFilter.ALL.ofClass(in.id());
      List<ResultLine> whole =
          book.pieces().list(PieceFilter.ALL.ofClass(in.id())).stream()
              .map(ResultLine::of)
              .toList();
      assertThat(book.results().list(all.withFaults()))
          .hasSizeGreaterThan(200)
          .containsExactlyInAnyOrderElementsOf(whole);
      assertThat(book.results().list(all)).allMatch(line -> line.worstFault() == 0);
      Lesson lesson = book.lessons().of(in.id()).get(1);
      assertThat(book.results().list(all.ofLesson(lesson.id())))
          .hasSize(book.pieces().count(PieceFilter.ALL.ofLesson(lesson.id())));
      Set<UUID> planned =
          book.lessons().of(in.id()).stream()
              .flatMap(each -> book.lessons().planOf(each.id()).stream())
              .filter(PlannedPiece::control)
              .map(PlannedPiece::id)
              .collect(Collectors.toSet());
      Set<UUID> controls =
          book.pieces().list(PieceFilter.ALL.ofClass(in.id())).stream()
              .filter(each -> planned.contains(each.whose().plannedId()))
              .map(TestPiece::id)
              .collect(Collectors.toSet());
      assertThat(book.results().controls(all)).isNotEmpty().isEqualTo(controls);
    }
  }

  @Test
  void piecesToldOneByOneAreThoseOfTheLists() {
    Path file = folder.resolve("demo.walebook");
    try (Book book = new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK).make(file, 3).value()) {
      ResultFilter all = ResultFilter.ALL.ofClass(book.classes().all().get(0).id());
      List<ResultLine> lines = new ArrayList<>();
      List<DoneLine> done = new ArrayList<>();
      book.results()
          .each(
              all.withFaults(),
              (line, of) -> {
                lines.add(line);
                done.add(of);
              });
      assertThat(lines).containsExactlyInAnyOrderElementsOf(book.results().list(all.withFaults()));
      assertThat(done).containsExactlyInAnyOrderElementsOf(book.results().done(all));
      Map<UUID, String> aliases =
          book.students().all().stream().collect(Collectors.toMap(Student::id, Student::alias));
      PieceOrder order = book.pieces().inOrder(all, Set.of(), Set.of(), true);
      List<TestPiece> pieces = new ArrayList<>(order.some(0, 7));
      pieces.addAll(order.some(7, order.size()));
      List<UUID> keys = pieces.stream().map(TestPiece::id).toList();
      assertThat(keys)
          .containsExactlyElementsOf(
              done.stream()
                  .sorted(
                      Comparator.comparing(DoneLine::sewnOn)
                          .thenComparing(each -> aliases.get(each.studentId()))
                          .thenComparing(DoneLine::code))
                  .map(DoneLine::pieceId)
                  .toList());
      assertThat(pieces)
          .containsExactlyInAnyOrderElementsOf(
              book.pieces().list(PieceFilter.ALL.ofClass(all.classIds().get(0))));
      assertThat(pieces).anyMatch(each -> each.measure().pulls().size() > 1);
      assertThat(pieces).anyMatch(each -> !each.seen().faults().isEmpty());
      assertThat(order.some(3, 3)).isEmpty();
      Map<UUID, String> codes =
          done.stream().collect(Collectors.toMap(DoneLine::pieceId, DoneLine::code));
      assertThat(book.pieces().codes(keys)).isEqualTo(codes);
    }
  }
}
