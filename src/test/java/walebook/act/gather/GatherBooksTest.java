package walebook.act.gather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.book.OlderBook;
import walebook.book.PieceFilter;
import walebook.book.gather.Choice;
import walebook.book.gather.Conflict;
import walebook.book.gather.FromBook;
import walebook.book.sqlite.Migrations;
import walebook.book.sqlite.SqliteLink;
import walebook.record.PhotoInfo;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/** Gathering real files: what comes, what stays, what a person is asked. */
class GatherBooksTest {
  @TempDir Path folder;
  private Path tutor;
  private Classroom room;

  @BeforeEach
  void makeTheTutorsBook() {
    tutor = folder.resolve("tutor.walebook");
    room = Classroom.in(tutor);
    room.close();
  }

  private TestPiece piece(double endMm) {
    return room.piece(
        room.first.id(),
        2.5,
        List.of(
            new PullReading(1, SeamEnd.HELD, endMm + 1), new PullReading(2, SeamEnd.GAVE, endMm)),
        List.of(Classroom.fault("wavy-seam", 2)),
        null);
  }

  private static byte[] photo(Book book, TestPiece of, int size, long seed) {
    byte[] image = new byte[size];
    new Random(seed).nextBytes(image);
    book.photos().add(Classroom.photo(of.id()), image);
    return image;
  }

  @Test
  void whatOnlyTheStudentHasComesWholeAndASecondTimeAddsNothing() throws Exception {
    Path student = Hall.copy(tutor, "student.walebook");
    TestPiece piece = piece(131);
    List<byte[]> images = new ArrayList<>();
    Hall.work(
        student,
        book -> {
          book.pieces().add(piece);
          images.add(photo(book, piece, 50_000, 3));
        });
    String before = Hall.hash(student);
    FromBook came = Hall.gather(tutor, student).books().get(0);
    assertThat(came.problem()).isNull();
    assertThat(List.of(came.added(), came.pieces(), came.photos())).containsExactly(2, 1, 1);
    Hall.work(
        tutor,
        book -> {
          assertThat(book.pieces().find(piece.id())).isEqualTo(piece);
          PhotoInfo info = book.photos().ofPiece(piece.id()).get(0);
          assertThat(book.photos().image(info.id())).isEqualTo(images.get(0));
        });
    String once = Hall.content(tutor);
    FromBook again = Hall.gather(tutor, student).books().get(0);
    assertThat(List.of(again.added(), again.taken(), again.conflicts())).containsOnly(0);
    assertThat(Hall.content(tutor)).isEqualTo(once);
    assertThat(Hall.hash(student)).as("the student's file").isEqualTo(before);
  }

  /**
   * Who changed a cloth since both books were one, and what stands then. The hours are those by
   * which the two clocks are wrong: they must not matter.
   */
  @ParameterizedTest(name = "here {0} ({2} h), there {1} ({3} h): {4}")
  @CsvSource({
    "0, 0, 0, 0, ''",
    "0, 1, 0, 5, there1",
    "0, 1, 0, -500, there1",
    "1, 0, 5, 0, here1",
    "1, 0, -500, 0, here1",
    "1, 1, 5, -5, conflict",
    "1, 1, -5, 5, conflict",
    "2, 1, 0, 900, conflict",
    "1, 2, 900, 0, conflict"
  })
  void aLaterChangeWinsOnlyWhenItIsReallyLater(
      int here, int there, int hereHours, int thereHours, String stands) throws Exception {
    Path student = folder.resolve("student.walebook");
    Files.copy(tutor, student);
    ownBook(student);
    // Gathered once, so that both know their common ancestor.
    Hall.gather(tutor, student);
    for (int i = 1; i <= here; i++) {
      Hall.remark(tutor, "here" + i, hereHours);
    }
    for (int i = 1; i <= there; i++) {
      Hall.remark(student, "there" + i, thereHours);
    }
    FromBook came = Hall.gather(tutor, student).books().get(0);
    boolean conflict = stands.equals("conflict");
    assertThat(came.conflicts()).isEqualTo(conflict ? 1 : 0);
    assertThat(Hall.remarkOf(tutor)).isEqualTo(conflict ? "here" + here : stands);
    FromBook again = Hall.gather(tutor, student).books().get(0);
    assertThat(again.conflicts()).as("not asked twice").isEqualTo(conflict ? 1 : 0);
    assertThat(again.taken()).isZero();
  }

  /** The program gives each book an id of its own; a plain copy shares it. */
  private static void ownBook(Path file) throws Exception {
    try (Connection link = SqliteLink.migrator(file)) {
      SqliteLink.run(link, "UPDATE book_info SET id = '" + Ids.next() + "'");
    }
  }

  @Test
  void twoPlainCopiesOfTheTutorsBookDoNotOverwriteEachOther() throws Exception {
    Path first = Hall.copy(tutor, "first.walebook");
    Path second = Hall.copy(tutor, "second.walebook");
    Hall.remark(first, "first", 1);
    Hall.remark(second, "second", 2);
    Hall.remark(second, "second again", 3);
    GatherBooks.Gathered came = Hall.gather(tutor, first, second);
    assertThat(came.books().get(0).taken()).isEqualTo(1);
    assertThat(came.books().get(1).conflicts()).isEqualTo(1);
    assertThat(Hall.remarkOf(tutor)).isEqualTo("first");
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aDecidedConflictIsNotAskedAgainAndALaterChangeIs(boolean theirs) throws Exception {
    Path student = Hall.copy(tutor, "student.walebook");
    ownBook(student);
    Hall.gather(tutor, student);
    Hall.remark(tutor, "mine", 0);
    Hall.remark(student, "theirs", 0);
    Hall.gather(tutor, student);
    Hall.work(
        tutor,
        book -> {
          Conflict open = new DecideConflicts(book).open().get(0);
          assertThat(open.title()).isEqualTo("Grey jersey");
          assertThat(open.fields())
              .containsExactly(
                  new Conflict.Field(
                      "remark",
                      List.of(List.of(new Conflict.Value("cloth", "remark", "mine"))),
                      List.of(List.of(new Conflict.Value("cloth", "remark", "theirs")))));
          assertThat(
                  new DecideConflicts(book)
                      .decide(open.id(), theirs ? Choice.THEIRS : Choice.MINE, Hall.TUTOR)
                      .isGood())
              .isTrue();
          assertThat(new DecideConflicts(book).open()).isEmpty();
          if (theirs) {
            assertThat(book.history().of("cloth", room.cloth.id()))
                .filteredOn(each -> each.act().equals("gather.decide"))
                .singleElement()
                .satisfies(each -> assertThat(each.before()).contains("mine"));
          }
        });
    assertThat(Hall.remarkOf(tutor)).isEqualTo(theirs ? "theirs" : "mine");
    assertThat(Hall.gather(tutor, student).books().get(0).conflicts()).isZero();
    Hall.remark(student, "later", 0);
    FromBook later = Hall.gather(tutor, student).books().get(0);
    assertThat(later.taken()).isEqualTo(theirs ? 1 : 0);
    assertThat(later.conflicts()).isEqualTo(theirs ? 0 : 1);
  }

  @Test
  void twoPiecesWithOneCodeAreBothKeptAndTheCodeGoesWhereAPersonSays() throws Exception {
    Path student = Hall.copy(tutor, "student.walebook");
    TestPiece mine = piece(131);
    TestPiece theirs = withCode(piece(120), mine.code());
    Hall.work(tutor, book -> book.pieces().add(mine));
    Hall.work(student, book -> book.pieces().add(theirs));
    assertThat(Hall.gather(tutor, student).books().get(0).conflicts()).isEqualTo(1);
    Hall.work(
        tutor,
        book -> {
          assertThat(book.pieces().count(PieceFilter.ALL)).isEqualTo(2);
          assertThat(holderOf(mine.code(), book)).isEqualTo(mine.id());
          DecideConflicts decide = new DecideConflicts(book);
          Conflict twin = decide.open().get(0);
          assertThat(twin.why()).isEqualTo(Conflict.Why.TWIN);
          decide.decide(twin.id(), Choice.THEIRS, Hall.TUTOR);
          assertThat(holderOf(mine.code(), book)).isEqualTo(theirs.id());
          assertThat(book.pieces().count(PieceFilter.ALL)).isEqualTo(2);
        });
    assertThat(Hall.gather(tutor, student).books().get(0).conflicts()).isZero();
  }

  private static UUID holderOf(String code, Book book) {
    return Objects.requireNonNull(book.pieces().byCode(code)).id();
  }

  private static TestPiece withCode(TestPiece of, String code) {
    return new TestPiece(
        of.id(),
        code,
        of.whose(),
        of.cloth(),
        of.setting(),
        of.measure(),
        of.seen(),
        of.parent(),
        of.stamp());
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aClothMadeInBothBooksIsKeptTwiceOrMadeOneAsAPersonSays(boolean same) throws Exception {
    Path student = folder.resolve("student.walebook");
    Classroom other = Classroom.in(student);
    TestPiece theirs = other.piece(SeamEnd.GAVE, 120);
    other.book.pieces().add(theirs);
    other.close();
    FromBook came = Hall.gather(tutor, student).books().get(0);
    assertThat(came.problem()).isNull();
    Hall.work(
        tutor,
        book -> {
          assertThat(book.cloths().all()).hasSize(2);
          assertThat(book.machines().all()).hasSize(2);
          DecideConflicts decide = new DecideConflicts(book);
          for (Conflict each : decide.open()) {
            if (each.why() == Conflict.Why.SAME_NAME && each.entity().equals("cloth")) {
              decide.decide(each.id(), same ? Choice.MINE : Choice.THEIRS, Hall.TUTOR);
            }
          }
          assertThat(book.cloths().all()).hasSize(same ? 1 : 2);
          assertThat(Objects.requireNonNull(book.pieces().find(theirs.id())).cloth().clothId())
              .isEqualTo(same ? room.cloth.id() : other.cloth.id());
        });
    FromBook again = Hall.gather(tutor, student).books().get(0);
    assertThat(List.of(again.added(), again.taken())).containsOnly(0);
  }

  /** Books that changed different things give one result in any order. */
  @Test
  void theOrderOfBooksDoesNotMatterForDifferentThings() throws Exception {
    List<Path> books = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Path student = Hall.copy(tutor, "s" + i + ".walebook");
      ownBook(student);
      TestPiece piece = piece(120 + i);
      Hall.work(student, book -> book.pieces().add(piece));
      books.add(student);
    }
    Hall.remark(books.get(2), "changed", 0);
    Path other = Hall.copy(tutor, "other.walebook");
    Hall.gather(tutor, books.toArray(Path[]::new));
    java.util.Collections.reverse(books);
    books.forEach(each -> Hall.gather(other, each));
    assertThat(Hall.content(tutor)).isEqualTo(Hall.content(other));
  }

  @Test
  void thirtyBooksOfAHundredPiecesWithPhotosAreAllOrNothing() throws Exception {
    List<Path> books = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      Path student = Hall.copy(tutor, "s" + i + ".walebook");
      int number = i;
      Hall.work(
          student,
          book ->
              book.inOneStep(
                  () -> {
                    for (int k = 0; k < 100; k++) {
                      TestPiece piece = piece(110 + k % 40);
                      book.pieces().add(piece);
                      photo(book, piece, 4000, number * 100L + k);
                    }
                    return number;
                  }));
      books.add(student);
    }
    String before = Hall.content(tutor);
    String file = Hall.hash(tutor);
    List<Double> shares = new ArrayList<>();
    try (Book book = Hall.FILES.open(tutor, Classroom.CLOCK).value()) {
      GatherBooks act = new GatherBooks(book, Hall.FILES, Classroom.CLOCK);
      assertThatThrownBy(
              () ->
                  act.gather(
                      books,
                      true,
                      Hall.TUTOR,
                      (share, of) -> {
                        shares.add(share);
                        if (share > 0.5) {
                          throw new CancellationException();
                        }
                      }))
          .isInstanceOf(CancellationException.class);
      assertThat(book.pieces().count(PieceFilter.ALL)).isZero();
    }
    assertThat(shares).isSorted().hasSizeGreaterThan(100);
    assertThat(Hall.hash(tutor)).isEqualTo(file);
    assertThat(Hall.content(tutor)).isEqualTo(before);
    GatherBooks.Gathered tried =
        Hall.at(tutor, b -> Hall.gather(b, false, books.toArray(Path[]::new)));
    assertThat(tried.backup()).isNull();
    assertThat(Hall.content(tutor)).as("a trial").isEqualTo(before);
    GatherBooks.Gathered came = Hall.gather(tutor, books.toArray(Path[]::new));
    assertThat(came.books()).isEqualTo(tried.books());
    assertThat(came.books()).allSatisfy(each -> assertThat(each.photos()).isEqualTo(100));
    assertThat(came.backup()).exists();
    assertThat(Hall.content(Objects.requireNonNull(came.backup()))).isEqualTo(before);
    Hall.work(tutor, b -> assertThat(b.pieces().count(PieceFilter.ALL)).isEqualTo(3000));
  }

  @Test
  void girthsOfABodyStayWhereTheyAre() throws Exception {
    Path student = folder.resolve("student.walebook");
    new walebook.act.book.MakeDemoBook(Hall.FILES, Classroom.CLOCK)
        .make(student, 7)
        .value()
        .close();
    Hall.work(
        student,
        book -> book.garments().keepBody(book.garments().all().get(0).id(), Map.of("bust", 911.0)));
    FromBook came = Hall.gather(tutor, student).books().get(0);
    assertThat(came.problem()).isNull();
    Hall.work(
        tutor,
        book -> {
          assertThat(book.garments().all()).isNotEmpty();
          book.garments()
              .all()
              .forEach(each -> assertThat(book.garments().bodyOf(each.id())).isEmpty());
        });
    try (Connection link = SqliteLink.migrator(tutor)) {
      assertThat(SqliteLink.ask(link, "PRAGMA foreign_key_check")).isEmpty();
    }
    String once = Hall.content(tutor);
    Hall.gather(tutor, student);
    assertThat(Hall.content(tutor)).isEqualTo(once);
  }

  @Test
  void damagedForeignAndHostileFilesAreSaidAndTheOthersGoOn() throws Exception {
    Path good = Hall.copy(tutor, "good.walebook");
    Hall.work(good, book -> book.pieces().add(piece(131)));
    Path text = Files.writeString(folder.resolve("text.walebook"), "no book");
    Path foreign = folder.resolve("foreign.walebook");
    try (Connection link = SqliteLink.migrator(foreign)) {
      SqliteLink.run(link, "CREATE TABLE a (b)");
    }
    Path trigger = Hall.copy(tutor, "trigger.walebook");
    try (Connection link = SqliteLink.migrator(trigger)) {
      SqliteLink.run(link, "CREATE TRIGGER t AFTER INSERT ON note BEGIN SELECT 1; END");
    }
    Path nonsense = Hall.copy(good, "nonsense.walebook");
    try (Connection link = SqliteLink.migrator(nonsense)) {
      SqliteLink.run(link, "PRAGMA ignore_check_constraints = ON");
      SqliteLink.run(link, "UPDATE cloth SET mass_gm2 = -4, row_version = 2");
    }
    Path cut = folder.resolve("cut.walebook");
    byte[] bytes = Files.readAllBytes(good);
    Files.write(cut, java.util.Arrays.copyOf(bytes, bytes.length / 2));
    Path open = Hall.copy(tutor, "open.walebook");
    try (Book held = Hall.FILES.open(open, Classroom.CLOCK).value()) {
      List<FromBook> came =
          Hall.gather(
                  tutor,
                  text,
                  foreign,
                  trigger,
                  nonsense,
                  cut,
                  open,
                  tutor,
                  folder.resolve("gone.walebook"),
                  good)
              .books();
      assertThat(came.stream().map(each -> each.problem() == null ? "" : each.problem().code()))
          .containsExactly(
              "book.not-a-book",
              "book.other-program",
              "gather.other-tables",
              "gather.breaks-rule",
              "book.damaged",
              "book.open-elsewhere",
              "gather.itself",
              "book.missing",
              "");
      assertThat(held.file()).isEqualTo(open);
    }
    Hall.work(tutor, book -> assertThat(book.pieces().count(PieceFilter.ALL)).isEqualTo(1));
  }

  static Stream<Integer> olderShapes() {
    return Stream.iterate(1, each -> each + 1).limit(Migrations.newest() - 1);
  }

  @ParameterizedTest(name = "shape {0}")
  @org.junit.jupiter.params.provider.MethodSource("olderShapes")
  void aBookOfAnOlderShapeIsReadThroughACopy(int shape) throws Exception {
    TestPiece piece = piece(131);
    Path today = Hall.copy(tutor, "today.walebook");
    Hall.work(today, book -> book.pieces().add(piece));
    Path old = OlderBook.make(folder.resolve("old.walebook"), shape, today);
    String before = Hall.hash(old);
    List<Path> beside = besides(old);
    assertThat(Hall.gather(tutor, old).books().get(0).pieces()).isEqualTo(1);
    TestPiece kept = Classroom.inShape(piece, shape);
    Hall.work(tutor, book -> assertThat(book.pieces().find(piece.id())).isEqualTo(kept));
    assertThat(Hall.hash(old)).isEqualTo(before);
    assertThat(besides(old)).isEqualTo(beside);
  }

  private static List<Path> besides(Path file) throws IOException {
    try (Stream<Path> all = Files.list(file.getParent())) {
      return all.filter(each -> each.toString().contains("old")).sorted().toList();
    }
  }
}
