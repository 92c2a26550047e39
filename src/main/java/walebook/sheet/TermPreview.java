package walebook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import walebook.record.Tutor;
import walebook.words.Words;

/**
 * What an export would hold, before anything is written.
 *
 * @param sheets each with how many rows of data
 * @param besides what goes out without rows of its own: the summary, charts, the explanation
 * @param people students as they would appear, by name or by code
 * @param names whether these are names
 * @param tutor the tutor's name where it goes out, or null
 * @param inText names of people that stand in free text, of the class or not
 * @param columns titles of the chosen columns of the table of pieces
 * @param pieces how many test pieces
 * @param setAside how many values are left out of the comparisons
 */
public record TermPreview(
    List<Sheet> sheets,
    List<Besides> besides,
    int pieces,
    List<String> people,
    boolean names,
    @Nullable String tutor,
    List<NameInText> inText,
    List<String> columns,
    int setAside) {

  /**
   * One sheet or table.
   *
   * @param formats the kinds of file that hold it
   */
  public record Sheet(String name, int rows, Set<TermFormat> formats) {
    public Sheet {
      formats = Set.copyOf(formats);
    }
  }

  /**
   * A sheet that tells of the others.
   *
   * @param says its name and what stands on it, already worded
   * @param formats the kinds of file that hold it
   */
  public record Besides(String says, Set<TermFormat> formats) {
    public Besides {
      formats = Set.copyOf(formats);
    }
  }

  public TermPreview {
    sheets = List.copyOf(sheets);
    besides = List.copyOf(besides);
    people = List.copyOf(people);
    inText = List.copyOf(inText);
    columns = List.copyOf(columns);
  }

  /** What the workbook would hold. */
  public static TermPreview of(TermFacts facts, Words words) {
    List<Sheet> sheets = new ArrayList<>();
    List<SheetPart<?>> parts = TermParts.of(facts, words);
    for (SheetPart<?> each : parts) {
      sheets.add(new Sheet(words.say(each.name()), each.count(), formats(each)));
    }
    if (facts.choice().studentSheets()) {
      facts
          .students()
          .forEach(
              each ->
                  sheets.add(
                      new Sheet(
                          facts.shown(each),
                          pieces(facts, each.id()),
                          Set.of(TermFormat.WORKBOOK))));
    }
    Tutor tutor = facts.tutor();
    return new TermPreview(
        sheets,
        besides(facts, words),
        facts.pieceCount(),
        facts.students().stream().map(facts::shown).toList(),
        facts.names(),
        tutor == null ? null : tutor.name(),
        NameSearch.in(facts, parts, words),
        facts.chosen(PieceColumns.all(facts.lookup(), words)).stream()
            .map(each -> each.title(words))
            .toList(),
        facts.comparison().setAside());
  }

  private static List<Besides> besides(TermFacts facts, Words words) {
    Set<TermFormat> explained = Set.of(TermFormat.WORKBOOK, TermFormat.TABLES);
    List<Besides> besides = new ArrayList<>();
    besides.add(new Besides(words.say("sheet.preview.term"), explained));
    if (ChartSheet.isWanted(facts)) {
      besides.add(new Besides(words.say("sheet.preview.charts"), Set.of(TermFormat.WORKBOOK)));
    }
    besides.add(new Besides(words.say("sheet.preview.columns"), explained));
    return besides;
  }

  /** The kinds of file that hold a part. */
  static Set<TermFormat> formats(SheetPart<?> part) {
    return part.streamed()
        ? Set.of(TermFormat.values())
        : Set.of(TermFormat.WORKBOOK, TermFormat.JSON, TermFormat.TABLES);
  }

  private static int pieces(TermFacts facts, java.util.UUID student) {
    return facts.piecesEach().getOrDefault(student, 0);
  }
}
