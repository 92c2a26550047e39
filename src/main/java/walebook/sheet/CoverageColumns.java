package walebook.sheet;

import java.util.List;
import java.util.stream.Collectors;
import walebook.compare.assessed.MarkWords;
import walebook.words.Words;

/** The columns of the sheet of coverage: a row is one student and one criterion. */
final class CoverageColumns {
  static final String COVERED = "covered";

  private CoverageColumns() {}

  static List<Column<CoverageLine>> of(TermFacts facts, Words words) {
    return List.of(
        Column.text(
            "student",
            "sheet.coverage.student",
            "sheet.coverage.student.says",
            Origin.PERSON,
            Format.TEXT,
            line -> facts.shown(line.student())),
        Column.words(
            "criterion",
            "sheet.coverage.criterion",
            "sheet.coverage.criterion.says",
            Origin.TYPED,
            line -> line.criterion().code()),
        Column.text(
            "asks",
            "sheet.coverage.asks",
            "sheet.coverage.asks.says",
            Origin.TYPED,
            Format.LONG_TEXT,
            line -> line.criterion().says()),
        Column.<CoverageLine>text(
                "looks-at",
                "sheet.coverage.looks-at",
                "sheet.coverage.looks-at.says",
                Origin.TYPED,
                Format.LONG_TEXT,
                line -> looksAt(line, words))
            .wide(28),
        Column.whole(
            "evidence",
            "sheet.coverage.evidence",
            "sheet.coverage.evidence.says",
            Origin.COUNT,
            line -> line.cell().evidence()),
        Column.whole(
            "passed",
            "sheet.coverage.passed",
            "sheet.coverage.passed.says",
            Origin.COVERAGE,
            line -> line.cell().passed()),
        Column.text(
            "standing",
            "sheet.coverage.standing",
            "sheet.coverage.standing.says",
            Origin.COVERAGE,
            Format.TEXT,
            line -> words.say(line.cell().standing().says())),
        Column.words(
            COVERED,
            "sheet.coverage.covered",
            "sheet.coverage.covered.says",
            Origin.COVERAGE,
            line ->
                words.say(
                    line.cell().standing().isCovered()
                        ? "sheet.coverage.yes"
                        : "sheet.coverage.missing")));
  }

  private static String looksAt(CoverageLine line, Words words) {
    return MarkWords.of(line.criterion()).stream()
        .map(words::say)
        .collect(Collectors.joining(", "));
  }
}
