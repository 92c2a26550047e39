package walebook.book;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import walebook.record.By;
import walebook.record.Draft;
import walebook.record.Mention;
import walebook.record.Note;
import walebook.record.SeamEnd;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.record.Tier;

/** After somebody was taken out, the file's bytes are searched for the name, free pages and all. */
class PrivacyTest {
  private static final By TUTOR = By.named("Tutor");

  @TempDir Path folder;

  /** Whether the bytes of a text are in the book's file or the log beside it. */
  private static boolean isInFile(Path file, String text) throws IOException {
    String needle = new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
    for (Path each : List.of(file, file.resolveSibling(file.getFileName() + "-wal"))) {
      if (Files.exists(each)
          && new String(Files.readAllBytes(each), StandardCharsets.ISO_8859_1).contains(needle)) {
        return true;
      }
    }
    return false;
  }

  private static Student named(Classroom room, String name) {
    Student student = new Student(Ids.next(), name, "S77", Tier.STANDARD, Classroom.FRESH);
    room.book.students().add(student);
    room.book.enrolments().join(room.schoolClass.id(), student.id(), room.term.startsOn());
    return student;
  }

  /** Leaves the name wherever a book can have it. */
  private static TestPiece traces(Classroom room, Student student) {
    Book book = room.book;
    book.history().madeBy(new By(student.name(), student.id(), null));
    TestPiece piece = room.piece(student.id(), 2.5, List.of(), List.of(), null);
    book.pieces().add(piece);
    TestPiece binned = room.piece(student.id(), 3, List.of(), List.of(), null);
    book.pieces().add(binned);
    note(book, Note.About.PIECE, binned.id(), student.name(), "by " + student.name());
    book.photos().add(Classroom.photo(binned.id()), new byte[] {1, 2, 3});
    book.bin().put("test_piece", binned.id(), new By(student.name(), student.id(), null));
    TestPiece others = room.piece(SeamEnd.GAVE, 140);
    book.pieces().add(others);
    note(book, Note.About.PIECE, others.id(), "Tutor", "lent by " + student.name() + ", dry");
    note(book, Note.About.STUDENT, student.id(), "Tutor", student.name() + " is left-handed");
    book.drafts().keep(new Draft("piece", student.id().toString(), Map.of("remark", "x")));
    Map<String, String> mended = Map.of("#student", student.id().toString(), "remark", "y");
    book.drafts().keep(new Draft("mend-piece", others.id().toString(), mended));
    book.drafts().keep(new Draft("pack", "Tutor", Map.of("remark", student.name())));
    Student again =
        new Student(
            student.id(),
            student.name(),
            "S78",
            Tier.CORE,
            requireNonNull(book.students().find(student.id())).stamp().next(Classroom.NOW));
    book.students().update(again);
    book.history().madeBy(TUTOR);
    return piece;
  }

  private static void note(Book book, Note.About about, UUID id, String author, String body) {
    book.notes().add(new Note(Ids.next(), about, id, author, body, Classroom.FRESH));
  }

  @Test
  void aRowThatNamesAPersonTwiceIsToldOnce() {
    try (Classroom room = Classroom.in(folder.resolve("twice.walebook"))) {
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      assertThat(piece.measure().measuredBy()).isEqualTo(piece.whose().studentId());
      room.book.pieces().add(piece);
      assertThat(room.book.privacy().rowsOf(room.first.id())).containsEntry("test_piece", 1);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"Wenna Tidewater", "Zoë Ærøskøbing-Ünlü", "Ţăndărică \"Bosun\" Stråle"})
  void anAnonymousStudentKeepsTheirWorkAndTheNameIsNowhere(String name) throws Exception {
    Path file = folder.resolve("a.walebook");
    try (Classroom room = Classroom.in(file)) {
      Student student = named(room, name);
      TestPiece piece = traces(room, student);
      room.book.privacy().rename(student.id(), "S77", "S77");
      room.book.privacy().scrub();
      assertThat(requireNonNull(room.book.students().find(student.id())).name()).isEqualTo("S77");
      assertThat(room.book.pieces().find(piece.id())).isNotNull();
      assertThat(room.book.bin().all()).hasSize(1);
      gone(file, name);
      room.book.bin().restore(room.book.bin().all().get(0).id(), TUTOR);
    }
    gone(file, name);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void anErasedStudentIsGoneWithOrWithoutThePieces(boolean withPieces) throws Exception {
    Path file = folder.resolve("b.walebook");
    String name = "Zoë Ærøskøbing";
    try (Classroom room = Classroom.in(file)) {
      Student student = named(room, name);
      TestPiece piece = traces(room, student);
      room.book.privacy().scrub();
      assertThat(isInFile(file, name)).isTrue();
      room.book.privacy().erase(student.id(), withPieces, "erased", "E1");
      room.book.privacy().scrub();
      assertThat(room.book.pieces().find(piece.id()) == null).isEqualTo(withPieces);
      assertThat(room.book.bin().all()).hasSize(withPieces ? 0 : 1);
      assertThat(room.book.students().find(student.id()) == null).isEqualTo(withPieces);
      assertThat(room.book.enrolments().everyoneOf(room.schoolClass.id()))
          .extracting(Student::id)
          .doesNotContain(student.id());
      assertThat(room.book.notes().about(Note.About.STUDENT, student.id())).isEmpty();
      assertThat(room.book.drafts().of("piece")).isEmpty();
      assertThat(room.book.drafts().of("mend-piece")).isEmpty();
      assertThat(room.book.drafts().of("pack").get(0).typed()).containsEntry("remark", "erased");
      assertThat(isInFile(file, student.id().toString())).isEqualTo(!withPieces);
      gone(file, name);
    }
    gone(file, name);
  }

  private static void gone(Path file, String name) throws IOException {
    assertThat(isInFile(file, name)).isFalse();
    assertThat(isInFile(file, Normalizer.normalize(name, Normalizer.Form.NFD))).isFalse();
    assertThat(isInFile(file, name.replace("\"", "\\\""))).isFalse();
    for (String part : name.replace("\"", "").split("[ ]")) {
      assertThat(isInFile(file, part)).as(part).isFalse();
    }
  }

  @Test
  void mentionsAreFoundAndOthersOfLikeNameAreLeftAlone() throws Exception {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      Student student = named(room, "Ann Mole");
      Student longer = named(room, "Annabel Molehill");
      Student twin = named(room, "Ann Mole");
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
      note(room.book, Note.About.PIECE, piece.id(), "", "ANN  mole held the tape");
      note(room.book, Note.About.PIECE, piece.id(), "", "Ann helped");
      note(room.book, Note.About.PIECE, piece.id(), "", "Annabel Molehill, on the mole");
      assertThat(room.book.privacy().mentions(student.id()))
          .extracting(Mention::text, Mention::whole)
          .containsExactly(
              org.assertj.core.groups.Tuple.tuple(
                  "ANN  mole held the tape".replace("  ", " "), true),
              org.assertj.core.groups.Tuple.tuple("Ann helped", false),
              org.assertj.core.groups.Tuple.tuple("Annabel Molehill, on the mole", false));
      room.book.privacy().rename(student.id(), "S01", "S01");
      assertThat(room.book.notes().about(Note.About.PIECE, piece.id()))
          .extracting(Note::body)
          .containsExactly("S01 held the tape", "Ann helped", "Annabel Molehill, on the mole");
      assertThat(requireNonNull(room.book.students().find(longer.id())).name())
          .isEqualTo("Annabel Molehill");
      assertThat(requireNonNull(room.book.students().find(twin.id())).name()).isEqualTo("Ann Mole");
    }
  }
}
