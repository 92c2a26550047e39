package walebook.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import walebook.words.Words;

/** The headers of the tables beside the pieces' by key, for those who read our own workbook. */
public final class LogTables {
  private LogTables() {}

  public static Map<String, String> cloths(Words words) {
    return titles(ClothColumns.all(words), words);
  }

  public static Map<String, String> readings(Words words) {
    return titles(ReadingColumns.of(PieceLookup.NONE, new Choices(words), Set.of()), words);
  }

  public static Map<String, String> washes(Words words) {
    return titles(WashColumns.of(new Choices(words)), words);
  }

  public static Map<String, String> notes(Words words) {
    return titles(NoteColumns.of(PieceLookup.NONE, words), words);
  }

  private static <T> Map<String, String> titles(List<Column<T>> columns, Words words) {
    Map<String, String> titles = new LinkedHashMap<>();
    columns.forEach(each -> titles.put(each.key(), each.title(words)));
    return titles;
  }
}
