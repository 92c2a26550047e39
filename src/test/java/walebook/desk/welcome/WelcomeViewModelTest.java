package walebook.desk.welcome;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.RescueBook;
import walebook.act.book.RestoreBackup;
import walebook.book.Book;
import walebook.book.BookCopy;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.book.RescueReport;
import walebook.book.open.SqliteCare;
import walebook.book.open.SqliteFiles;
import walebook.desk.common.PickFile;
import walebook.desk.common.Worker;
import walebook.problem.Answer;
import walebook.quantity.Unit;
import walebook.record.SeamEnd;
import walebook.words.Words;

class WelcomeViewModelTest {
  @TempDir Path folder;

  private final List<Book> entered = new ArrayList<>();
  private final List<String> suggested = new ArrayList<>();

  @AfterEach
  void close() {
    entered.forEach(Book::close);
  }

  private final class RealWays implements Ways {
    @Override
    public List<Path> recent() {
      return List.of(Path.of("tuesday.walebook"));
    }

    @Override
    public Answer<Book> makeBook(Path file, String name) {
      return new SqliteFiles().make(file, name, false, Unit.MM, Classroom.CLOCK);
    }

    @Override
    public Answer<Book> openBook(Path file) {
      return new SqliteFiles().open(file, Classroom.CLOCK);
    }

    @Override
    public Answer<Book> openDemo() {
      return new SqliteFiles()
          .make(folder.resolve("demo.walebook"), "Demo", true, Unit.MM, Classroom.CLOCK);
    }

    @Override
    public Answer<RescueReport> rescue(Path damaged) {
      return new RescueBook(new SqliteCare(), Words.english(), Classroom.CLOCK)
          .into(damaged, folder.resolve("rescued.walebook"));
    }

    @Override
    public Answer<Book> goBack(Path file, Path copy) {
      return new RestoreBackup(new SqliteCare(), Classroom.CLOCK)
          .to(file, copy)
          .flatMap(before -> openBook(file));
    }
  }

  @Test
  void aDamagedBookIsRescuedOrGoneBackFromAndOtherwiseLeft() throws Exception {
    Path file = folder.resolve("worn.walebook");
    try (Classroom room = Classroom.in(file)) {
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 131));
    }
    Path copy =
        new SqliteCare().backUp(file, BookCopy.Why.ASKED, null, Classroom.CLOCK).value().file();
    byte[] worn = Files.readAllBytes(file);
    Arrays.fill(worn, 0, 100, (byte) 7);
    Files.write(file, worn);
    WelcomeViewModel model = model(file);
    model.open();
    assertThat(model.damagedProperty().get()).isEqualTo(file);
    model.leave();
    assertThat(model.damagedProperty().get()).isNull();
    model.open();
    model.rescue();
    RescueReport report = Objects.requireNonNull(model.rescuedProperty().get());
    assertThat(report.lost()).isZero();
    assertThat(Files.readAllBytes(file)).isEqualTo(worn);
    model.openRescued();
    assertThat(entered.get(0).pieces().count(PieceFilter.ALL)).isEqualTo(1);
    model.open();
    model.goBack(copy);
    assertThat(entered.get(1).pieces().count(PieceFilter.ALL)).isEqualTo(1);
    assertThat(model.damagedProperty().get()).isNull();
  }

  private WelcomeViewModel model(@Nullable Path chosen) {
    PickFile files =
        new PickFile() {
          @Override
          public @Nullable Path open(Kind kind) {
            return chosen;
          }

          @Override
          public @Nullable Path save(Kind kind, String name) {
            suggested.add(name);
            return chosen;
          }
        };
    return new WelcomeViewModel(
        Words.english(),
        Worker.sameThread(),
        files,
        new RealWays(),
        entered::add,
        fault -> {
          throw new IllegalStateException(fault);
        });
  }

  @Test
  void aNewBookNeedsANameAndSuggestsAFile() {
    WelcomeViewModel model = model(folder.resolve("mine.walebook"));
    model.make();
    assertThat(model.nameProblemProperty().get()).isNotEmpty();
    assertThat(entered).isEmpty();
    model.nameProperty().set("Tuesday evening, hall 2");
    assertThat(model.nameProblemProperty().get()).isEmpty();
    model.make();
    assertThat(suggested).containsExactly("tuesday-evening-hall-2.walebook");
    assertThat(entered)
        .singleElement()
        .satisfies(book -> assertThat(book.info().name()).isEqualTo("Tuesday evening, hall 2"));
  }

  @Test
  void whatIsNoBookIsSaidInASentence() throws Exception {
    Path text = Files.writeString(folder.resolve("notes.walebook"), "not a book at all, only text");
    WelcomeViewModel model = model(text);
    model.open();
    assertThat(entered).isEmpty();
    assertThat(model.problemProperty().get()).contains("notes.walebook").doesNotContain("[");
    assertThat(model.busyProperty().get()).isFalse();
    model.demo();
    assertThat(model.problemProperty().get()).isEmpty();
    assertThat(entered).hasSize(1);
  }

  @Test
  void choosingNoFileChangesNothing() {
    WelcomeViewModel model = model(null);
    model.open();
    model.nameProperty().set("A class");
    model.make();
    assertThat(entered).isEmpty();
    assertThat(model.problemProperty().get()).isEmpty();
    assertThat(model.recent()).hasSize(1);
  }
}
