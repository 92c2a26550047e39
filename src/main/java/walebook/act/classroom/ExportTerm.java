package walebook.act.classroom;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.seam.Fault;
import walebook.sheet.ExportProgress;
import walebook.sheet.GatherTerm;
import walebook.sheet.PieceColumns;
import walebook.sheet.TermChoice;
import walebook.sheet.TermFacts;
import walebook.sheet.TermPreview;
import walebook.sheet.WorkbookFile;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Writes one class's term as a workbook, or as the kind of file that the ending says. */
public final class ExportTerm {
  private final Book book;
  private final Words words;
  private final SharedTables tables;
  private final Clock clock;

  public ExportTerm(Book book, Words words, SharedTables tables, Clock clock) {
    this.book = book;
    this.words = words;
    this.tables = tables;
    this.clock = clock;
  }

  /** The columns of the table of pieces to choose from: titles by key, in their order. */
  public static Map<String, String> columns(Words words) {
    return PieceColumns.titles(words);
  }

  /** Their keys. */
  public static Set<String> columnKeys() {
    return PieceColumns.titles(Words.english()).keySet();
  }

  /** What would go out: sheets, rows, names or codes; or why nothing would. */
  public Answer<TermPreview> preview(UUID classId, TermChoice choice) {
    TermFacts facts = facts(classId, choice);
    return facts == null ? noClass(classId) : Answer.good(TermPreview.of(facts, words));
  }

  /**
   * Writes it; the file appears whole or not at all.
   *
   * @param replace true to put it in the place of a file that is there; otherwise that is refused
   * @param progress told how far it is; may stop it by throwing
   * @return the file, or what is in the way
   * @throws java.util.concurrent.CancellationException from the progress; no file is left then
   */
  public Answer<Path> export(
      Path file, UUID classId, TermChoice choice, boolean replace, ExportProgress progress) {
    Problem problem = WorkbookFile.inTheWay(file);
    if (problem != null) {
      return Answer.bad(problem);
    }
    if (Files.exists(file) && !replace) {
      return Answer.bad(WorkbookFile.exists(file));
    }
    return book.inOneStep(
        () -> {
          TermFacts facts = facts(classId, choice);
          return facts == null
              ? noClass(classId)
              : WorkbookFile.write(facts, words, file, replace, progress);
        });
  }

  private @Nullable TermFacts facts(UUID classId, TermChoice choice) {
    return new GatherTerm(
            book,
            clock,
            tables.faults().stream().collect(Collectors.toMap(Fault::key, Fault::name)),
            words.say("sheet.tutor-word"))
        .of(classId, choice, () -> new GatherExtras(book, words, tables).of(classId, choice));
  }

  private static <T> Answer<T> noClass(UUID classId) {
    return Answer.bad(
        Problem.refuse("sheet.no-class", Place.field("class"), classId.toString(), ""));
  }
}
