package walebook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.MakeDemoBook;
import walebook.book.open.SqliteFiles;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.ResultLine;
import walebook.record.SchoolClass;

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
      Set<java.util.UUID> planned =
          book.lessons().of(in.id()).stream()
              .flatMap(each -> book.lessons().planOf(each.id()).stream())
              .filter(PlannedPiece::control)
              .map(PlannedPiece::id)
              .collect(Collectors.toSet());
      Set<java.util.UUID> controls =
          book.pieces().list(PieceFilter.ALL.ofClass(in.id())).stream()
              .filter(each -> planned.contains(each.whose().plannedId()))
              .map(walebook.record.TestPiece::id)
              .collect(Collectors.toSet());
      assertThat(book.results().controls(all)).isNotEmpty().isEqualTo(controls);
    }
  }
}
