package walebook.act.classroom;

import java.nio.file.Path;
import java.time.Clock;
import java.util.UUID;
import java.util.stream.Collectors;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.seam.Fault;
import walebook.sheet.ExportProgress;
import walebook.sheet.GatherTerm;
import walebook.sheet.TermFacts;
import walebook.sheet.WorkbookFile;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Writes the workbook of one class's term. */
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

  /**
   * Writes the workbook; the file appears whole or not at all. A file that is there is replaced:
   * ask before.
   *
   * @param names true to write students' and the tutor's names, false to write aliases alone
   * @param progress told how far it is; may stop it by throwing
   * @return the file, or what is in the way
   * @throws java.util.concurrent.CancellationException from the progress; no file is left then
   */
  public Answer<Path> export(Path file, UUID classId, boolean names, ExportProgress progress) {
    Problem problem = WorkbookFile.inTheWay(file);
    if (problem != null) {
      return Answer.bad(problem);
    }
    TermFacts facts =
        new GatherTerm(
                book,
                clock,
                tables.faults().stream().collect(Collectors.toMap(Fault::key, Fault::name)),
                words.say("sheet.tutor-word"))
            .of(classId, names);
    if (facts == null) {
      return Answer.bad(
          Problem.refuse("sheet.no-class", Place.field("class"), classId.toString(), ""));
    }
    return WorkbookFile.write(facts, words, file, progress);
  }
}
