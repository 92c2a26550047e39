package walebook.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import walebook.record.TestPiece;
import walebook.words.Words;

/** The columns of the table of test pieces, to choose from. */
public final class PieceColumns {
  private PieceColumns() {}

  /** Titles by key, in the order of the table. */
  public static Map<String, String> titles(Words words) {
    Map<String, String> titles = new LinkedHashMap<>();
    all(PieceLookup.NONE, words).forEach(each -> titles.put(each.key(), each.title(words)));
    return titles;
  }

  /** Every column, in the order of the work: whose, the cloth, the machine, the measure, seen. */
  public static List<Column<TestPiece>> all(PieceLookup lookup, Words words) {
    Choices choices = new Choices(words);
    return Stream.of(
            PieceWhoseColumns.of(lookup, choices),
            PieceSettingColumns.of(lookup, choices),
            PieceResultColumns.of(lookup, choices),
            PieceMeasureColumns.of(lookup, choices),
            PieceSeenColumns.of(lookup, choices))
        .flatMap(List::stream)
        .toList();
  }
}
