package walebook.act.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.DemoBook;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.ResultFilter;
import walebook.compare.CompareBySetting;
import walebook.compare.CompareFairly;
import walebook.compare.Factor;
import walebook.compare.FairComparison;
import walebook.compare.FairFindings;
import walebook.compare.FairQuestion;
import walebook.compare.FairRow;
import walebook.compare.Names;
import walebook.compare.Outcome;
import walebook.compare.known.KnownSoFar;
import walebook.record.ResultLine;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

class AskKnownTest {
  @TempDir Path folder;

  private static final AskKnown.Which ALL = new AskKnown.Which(null, null, false);

  private static FairQuestion question() {
    return FairQuestion.of(Outcome.SEAM_STRETCH, List.of());
  }

  @Test
  void everyStitchIsNamedOnceWhateverItsClothAndInTheAlphabetsOrder() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
      room.book.pieces().add(room.piece(SeamEnd.HELD, 150));
      AskKnown act = new AskKnown(List.of(room.book));
      assertThat(act.stitches(null)).containsExactly(piece.setting().stitchName());
      assertThat(act.stitches("no such cloth")).isEmpty();
    }
  }

  @Test
  void itStopsWhereItIsToldToAndTheBookCanBeAskedAgain() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 140));
      Runnable stopped =
          () -> {
            throw new CancellationException();
          };
      AskKnown act = new AskKnown(List.of(room.book), stopped);
      assertThatThrownBy(() -> act.ask(ALL, question())).isInstanceOf(CancellationException.class);
      assertThat(new AskKnown(List.of(room.book)).ask(ALL, question()).classes()).hasSize(1);
    }
  }

  /** A tutor may add a copy that was made of the book last month. */
  @Test
  void whatABookAndItsCopyHoldCountsOnce() {
    try (Book book = DemoBook.open(folder.resolve("one.walebook"));
        Book copy = DemoBook.open(folder.resolve("copy.walebook"))) {
      KnownSoFar alone = new AskKnown(List.of(book)).ask(ALL, question());
      KnownSoFar both = new AskKnown(List.of(book, copy)).ask(ALL, question());
      assertThat(both.together().pieces()).isEqualTo(alone.together().pieces());
      assertThat(both.classes()).isEqualTo(alone.classes());
    }
  }

  /** The demo's pieces at once, as one class compares them, against the same read and let go. */
  @Test
  void theDemoBookSaysWhatItsPiecesSayThatAreHeldAllAtOnce() {
    try (Book book = DemoBook.open(folder.resolve("demo.walebook"))) {
      List<ResultLine> lines = book.results().list(ResultFilter.ALL);
      Names names = Names.of(book, false, lines);
      for (Outcome outcome : Outcome.values()) {
        for (List<Factor> factors : List.of(CompareBySetting.USUAL, List.of(Factor.STITCH))) {
          FairQuestion question = FairQuestion.of(outcome, factors);
          FairComparison held =
              CompareFairly.of(
                  lines,
                  question,
                  Stretches.of(book, lines),
                  names,
                  SetAside.of(book, outcome),
                  null);
          AskKnown act = new AskKnown(List.of(book));
          KnownSoFar found = act.ask(ALL, question);
          assertThat(FairFindings.of(found.together(), String::valueOf))
              .isEqualTo(FairFindings.of(held, String::valueOf));
          assertThat(found.together().rows())
              .extracting(FairRow::lasting)
              .isEqualTo(held.rows().stream().map(FairRow::lasting).toList());
          assertThat(found.classes().stream().mapToInt(KnownSoFar.ClassLine::pieces).sum())
              .isEqualTo(held.pieces());
          assertThat(act.askForPieces(ALL, question).together().rows())
              .extracting(FairRow::dots)
              .isEqualTo(held.rows().stream().map(FairRow::dots).toList());
        }
      }
    }
  }
}
