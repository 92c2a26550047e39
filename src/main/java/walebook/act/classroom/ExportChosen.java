package walebook.act.classroom;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.DoubleConsumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.sheet.NameInText;
import walebook.sheet.TermChoice;
import walebook.sheet.TermFormat;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Previews and writes a term's record as a person chose it. */
public final class ExportChosen {
  /** The column that goes out whatever is chosen. */
  public static final String ALWAYS = TermChoice.CODE_COLUMN;

  private final ExportTerm act;
  private final Words words;

  public ExportChosen(Book book, Words words, SharedTables tables, Clock clock) {
    this.words = words;
    this.act = new ExportTerm(book, words, tables, clock);
  }

  /**
   * What was chosen; an empty set means all.
   *
   * @param names false for students' codes in the place of their names
   * @param studentSheets true for a sheet of its own for each student
   */
  public record Wanted(
      UUID classId,
      boolean names,
      Set<UUID> lessonIds,
      Set<UUID> studentIds,
      Set<String> columns,
      boolean studentSheets) {
    public Wanted {
      lessonIds = Set.copyOf(lessonIds);
      studentIds = Set.copyOf(studentIds);
      columns = Set.copyOf(columns);
    }

    private TermChoice choice() {
      return TermChoice.CODES
          .withNames(names)
          .ofLessons(lessonIds)
          .ofStudents(studentIds)
          .inColumns(columns)
          .withStudentSheets(studentSheets);
    }
  }

  /**
   * What would go out.
   *
   * @param rows each sheet with its number of rows
   * @param besides the sheets that tell of the others
   * @param people by name or code
   * @param tutor the tutor's name where it goes out, or null
   * @param named people named in free text
   * @param setAside values left out of the comparisons
   */
  public record Preview(
      List<Row> rows,
      List<Besides> besides,
      List<String> people,
      boolean names,
      @Nullable String tutor,
      List<Named> named,
      int pieces,
      int setAside) {
    public Preview {
      rows = List.copyOf(rows);
      besides = List.copyOf(besides);
      people = List.copyOf(people);
      named = List.copyOf(named);
    }

    /**
     * A name that stands in free text.
     *
     * @param whole true for a full name, which codes cover; a part stays as it is
     * @param in each sheet with how many of its cells hold the name
     */
    public record Named(String name, boolean whole, List<Row> in) {
      public Named {
        in = List.copyOf(in);
      }
    }

    /**
     * One sheet.
     *
     * @param endings of the files that hold it
     */
    public record Row(String sheet, int rows, Set<String> endings) {
      public Row {
        endings = Set.copyOf(endings);
      }
    }

    /**
     * A sheet without rows of its own.
     *
     * @param says its name and what stands on it
     * @param endings of the files that hold it
     */
    public record Besides(String says, Set<String> endings) {
      public Besides {
        endings = Set.copyOf(endings);
      }
    }

    /** What a file of this ending would hold besides its tables of rows, worded. */
    public List<String> besidesIn(String ending) {
      return besides.stream()
          .filter(each -> each.endings().contains(ending))
          .map(Besides::says)
          .toList();
    }

    /** What a file of this ending would hold. */
    public List<Row> rowsIn(String ending) {
      return rows.stream().filter(each -> each.endings().contains(ending)).toList();
    }

    /** The names that a file of this ending would hold in free text, full ones or parts. */
    public List<Named> namedIn(String ending, boolean whole) {
      return named.stream()
          .filter(each -> each.whole() == whole)
          .map(
              each ->
                  new Named(
                      each.name(),
                      whole,
                      each.in().stream().filter(in -> in.endings().contains(ending)).toList()))
          .filter(each -> !each.in().isEmpty())
          .toList();
    }
  }

  /** Titles of the columns to choose from, by key and in order. */
  public Map<String, String> columns() {
    return ExportTerm.columns(words);
  }

  /** What would go out. */
  public Answer<Preview> preview(Wanted wanted) {
    return act.preview(wanted.classId(), wanted.choice())
        .map(
            found ->
                new Preview(
                    found.sheets().stream()
                        .map(
                            each ->
                                new Preview.Row(each.name(), each.rows(), endings(each.formats())))
                        .toList(),
                    found.besides().stream()
                        .map(each -> new Preview.Besides(each.says(), endings(each.formats())))
                        .toList(),
                    found.people(),
                    found.names(),
                    found.tutor(),
                    found.inText().stream().map(ExportChosen::named).toList(),
                    found.pieces(),
                    found.setAside()));
  }

  private static Preview.Named named(NameInText found) {
    return new Preview.Named(
        found.name(),
        found.whole(),
        found.places().stream()
            .map(each -> new Preview.Row(each.sheet(), each.cells(), endings(each.formats())))
            .toList());
  }

  private static Set<String> endings(Set<TermFormat> formats) {
    return formats.stream().map(TermFormat::ending).collect(Collectors.toSet());
  }

  /**
   * Writes it, whole or not at all.
   *
   * @param replace true to put it in the place of a file that is there
   * @param progress told the share that is done; may throw to stop it
   */
  public Answer<Path> export(Path file, Wanted wanted, boolean replace, DoubleConsumer progress) {
    return act.export(file, wanted.classId(), wanted.choice(), replace, progress::accept);
  }
}
