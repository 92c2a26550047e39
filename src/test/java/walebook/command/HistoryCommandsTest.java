package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import walebook.book.Book;
import walebook.book.BookCopy;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.Backups;
import walebook.record.Seen;
import walebook.record.TestPiece;

/** History, bin and taking people out, at the command line. */
@SuppressWarnings("NullAway.Init")
class HistoryCommandsTest {
  @TempDir Path folder;
  private OnePiece one;

  @BeforeEach
  void makeBook() {
    one = OnePiece.in(folder);
    TestPiece piece = one.piece();
    try (Book book = new SqliteFiles().open(one.file(), Classroom.CLOCK).value()) {
      book.pieces()
          .update(
              piece
                  .with(new Seen(2, null, List.of(), "lent by Ada Pier"))
                  .with(piece.stamp().next(Classroom.NOW.plusSeconds(60))));
    }
  }

  private Ran run(String... args) {
    return one.run(args);
  }

  @Test
  void whatWasDoneIsTakenBackAndDoneAgain() {
    Ran undone = run("book", "undo", "--by", "Tutor");
    assertThat(undone.err()).isEmpty();
    assertThat(undone.out()).startsWith("Taken back: changed piece ");
    assertThat(run("piece", "show", one.code(), "--json").out()).contains("slow feed");
    assertThat(run("book", "redo").out()).startsWith("Done again: changed piece ");
    assertThat(run("piece", "show", one.code(), "--json").out()).contains("lent by");
    Ran none = run("book", "redo");
    assertThat(none.exit()).isEqualTo(Exit.REFUSED.code());
    assertThat(none.err()).contains("nothing to do again");
  }

  @Test
  void aPieceTellsWhatHappenedToItInTheFormsWords() {
    JsonNode events = run("piece", "history", one.code(), "--json").json();
    assertThat(events.size()).isEqualTo(2);
    JsonNode grade = events.get(1).get("fields").get(0);
    assertThat(grade.get("field").asString()).isEqualTo("grade");
    assertThat(grade.get("from").asString()).isEqualTo("4");
    assertThat(grade.get("to").asString()).isEqualTo("2");
    Ran text = run("book", "history", "--piece", one.code());
    assertThat(text.out()).contains("saved piece").contains("slow feed → lent by Ada Pier");
    assertThat(run("book", "history").out()).contains("saved cloth Grey jersey");
    assertThat(run("piece", "history", "ZZZ").exit()).isEqualTo(Exit.REFUSED.code());
  }

  @Test
  void aPieceGoesIntoTheBinAndComesOut() {
    assertThat(run("bin", "put", one.code()).out()).contains("piece ");
    assertThat(run("piece", "show", one.code()).exit()).isEqualTo(Exit.REFUSED.code());
    assertThat(run("piece", "history", one.code()).out()).contains("in the bin");
    Ran wrong = run("bin", "restore", "2");
    assertThat(wrong.exit()).isEqualTo(Exit.REFUSED.code());
    assertThat(run("bin", "restore", "1").out()).contains("The bin is empty.");
    assertThat(run("piece", "show", one.code()).exit()).isZero();
    Ran used = run("bin", "put", "Grey", "--kind", "cloth");
    assertThat(used.exit()).isEqualTo(Exit.REFUSED.code());
    assertThat(used.err()).contains("still in use by piece");
    run("bin", "put", one.code());
    assertThat(run("bin", "empty").err()).contains("--for-good");
    assertThat(run("bin", "list", "--json").json().size()).isEqualTo(1);
    assertThat(run("bin", "empty", "--for-good").out()).contains("The bin is empty.");
    assertThat(run("bin", "put", "x", "--kind", "hat").err()).contains("piece, planned");
  }

  @Test
  void aStudentIsLookedAtFirstAndTakenOutOnlyWhenItIsMeant() throws IOException {
    Ran look = run("student", "anonymise", "Ada");
    assertThat(look.err()).isEmpty();
    assertThat(look.out())
        .contains("Nothing was changed yet")
        .contains("lent by Ada Pier")
        .contains("A copy made before holds the name")
        .contains("on sticks");
    assertThat(Backups.list(one.file())).isNotEmpty();
    JsonNode done =
        run("student", "anonymise", "Ada", "--for-good", "--delete-copies", "--json").json();
    assertThat(done.get("standIn").asString()).isEqualTo("S01");
    assertThat(done.get("copies").size()).isZero();
    try (Book book = new SqliteFiles().open(one.file(), Classroom.CLOCK).value()) {
      assertThat(book.pieces().byCode(one.code())).isNotNull();
    }
    for (BookCopy each : Backups.list(one.file())) {
      assertThat(Files.readString(each.file(), StandardCharsets.ISO_8859_1))
          .doesNotContain("Ada Pier");
    }
    assertThat(Files.readString(one.file(), StandardCharsets.ISO_8859_1))
        .doesNotContain("Ada Pier");
  }

  @Test
  void anErasedStudentsPiecesGoOnlyWhenAsked() {
    JsonNode kept = run("student", "erase", "Ada", "--for-good", "--json").json();
    assertThat(kept.get("standIn").asString()).isEqualTo("E1");
    assertThat(kept.get("rows").get("test_piece").asInt()).isPositive();
    assertThat(run("piece", "show", one.code()).exit()).isZero();
    assertThat(run("student", "erase", "E1", "--for-good", "--with-pieces").exit()).isNotZero();
  }
}
