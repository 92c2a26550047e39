package walebook.act.print;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleConsumer;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.paper.LabelGrid;
import walebook.paper.PaperSize;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Keyed;
import walebook.record.Lesson;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Prints any kind of paper for a class as it was chosen in a form. */
public final class PrintPaper {
  private final Book book;
  private final Words words;
  private final SharedTables tables;

  /** What can be printed for a class. */
  public enum Kind implements Keyed {
    LABELS("labels"),
    CARDS("cards"),
    GRID("grid"),
    PLAN("plan"),
    HAND_OUT("hand-out"),
    KIT("kit"),
    RECORD("record"),
    MARKS("marks");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    @Override
    public String key() {
      return key;
    }
  }

  /**
   * What was chosen.
   *
   * @param paper key of the paper's size
   * @param labels the sheet of labels as {@link ChooseGrid} reads it
   * @param start the first label to print on, from 1
   * @param logged whether pieces that are logged already get a label too
   */
  public record Wanted(
      Kind kind,
      PrintScope scope,
      String paper,
      Map<String, String> labels,
      int start,
      boolean logged) {
    public Wanted {
      labels = Map.copyOf(labels);
    }
  }

  public PrintPaper(Book book, Words words, SharedTables tables) {
    this.book = book;
    this.words = words;
    this.tables = tables;
  }

  /**
   * Prints into a file in the place of one that may be there: ask before.
   *
   * @param progress told the share that is done; may stop it by throwing
   */
  public Answer<Printed> print(Wanted wanted, Path path, DoubleConsumer progress) {
    PaperSize size = Keyed.of(PaperSize.class, wanted.paper());
    PrintFile file = new PrintFile(path, true, progress::accept);
    PrintScope scope = wanted.scope();
    return switch (wanted.kind()) {
      case LABELS -> {
        Answer<LabelGrid> grid = ChooseGrid.of(wanted.labels(), size);
        PrintLabels labels = new PrintLabels(book, words, tables);
        yield grid.flatMap(
            found -> labels.print(scope, found, wanted.start(), wanted.logged(), file));
      }
      case CARDS -> new PrintCards(book, words, tables).print(scope, size, file);
      case GRID -> new PrintWallGrid(book, words, tables).print(scope, size, file);
      case PLAN -> new PrintPlan(book, words, tables).print(scope, size, file);
      case HAND_OUT -> handOut(scope, size, file);
      case KIT -> kit(scope, size, file);
      case RECORD -> new PrintTermRecord(book, words, tables).print(scope, size, file);
      case MARKS -> new PrintMarks(book, words, ZoneId.systemDefault()).print(scope, size, file);
    };
  }

  private Answer<Printed> handOut(PrintScope scope, PaperSize size, PrintFile file) {
    Lesson lesson = lesson(scope);
    return lesson == null ? noLesson() : new PrintHandOut(words).print(book, lesson, size, file);
  }

  private Answer<Printed> kit(PrintScope scope, PaperSize size, PrintFile file) {
    Lesson lesson = lesson(scope);
    return lesson == null
        ? noLesson()
        : new PrintKit(words).ofLesson(book, lesson, tables, size, file);
  }

  private @Nullable Lesson lesson(PrintScope scope) {
    return scope.lessonId() == null ? null : book.lessons().find(scope.lessonId());
  }

  private static Answer<Printed> noLesson() {
    return Answer.bad(Problem.refuse("print.no-lesson", Place.field("lesson"), "", ""));
  }

  /** The common sheets of labels of a size of paper, by key. */
  public static List<String> grids(String paper) {
    return LabelGrid.COMMON.stream()
        .filter(each -> each.paper().key().equals(paper))
        .map(LabelGrid::key)
        .toList();
  }
}
