package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the sheet of columns says of every column, word for word as it was read and approved. A
 * change here is to be read as critically as a new text: is that what the cells hold, is the
 * working the one that made them, and is the unit theirs?
 */
class ColumnTextsTest {
  @TempDir Path folder;

  @Test
  void everyColumnIsExplainedAsItWasApproved() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("a.walebook"), 30)) {
      assertThat(texts(harbour.facts(false))).isEqualTo(approved());
    }
  }

  private static List<String> texts(TermFacts facts) {
    var words = HarbourClass.WORDS;
    Choices choices = new Choices(words);
    PieceLookup lookup = facts.lookup();
    List<String> lines = new ArrayList<>();
    say(lines, "sheet.term.name", TermLines.all(words));
    say(lines, "sheet.comparison.name", ComparisonColumns.of(facts.comparison(), words));
    say(lines, "sheet.fair.name", FairColumns.of(words));
    say(lines, "sheet.pieces.name", PieceColumns.all(lookup, words));
    say(lines, "sheet.cloths.name", ClothColumns.all(words));
    say(lines, "sheet.readings.name", ReadingColumns.of(lookup, choices, Set.of()));
    say(lines, "sheet.washes.name", WashColumns.of(choices));
    say(lines, "sheet.progress.name", ProgressColumns.of(facts));
    say(lines, "sheet.plan.name", PlanColumns.of(lookup, choices));
    say(lines, "sheet.reading-plan.name", ReadingPlanColumns.of(lookup, choices));
    say(lines, "sheet.kit.name", KitColumns.of());
    say(lines, "sheet.garments.name", GarmentColumns.of(lookup));
    say(lines, "sheet.notes.name", NoteColumns.of(lookup, words));
    say(lines, "sheet.checks.name", MarkColumns.of(lookup, facts.assessed(), words));
    say(lines, "sheet.coverage.name", CoverageColumns.of(facts, words));
    say(lines, "sheet.columns.name", Explained.columns());
    return lines;
  }

  private static <T> void say(List<String> lines, String sheet, List<Column<T>> columns) {
    lines.add("== " + HarbourClass.WORDS.say(sheet));
    for (Explained each : Explained.of("", columns, HarbourClass.WORDS)) {
      String unit = each.unit().isEmpty() ? "" : " (" + each.unit() + ")";
      lines.add(each.column() + unit + ": " + each.what());
      lines.add("    " + each.how() + " [" + each.source() + "]");
    }
  }

  private static List<String> approved() throws IOException {
    try (InputStream in = ColumnTextsTest.class.getResourceAsStream("columns.txt")) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().toList();
    }
  }
}
