package walebook.desk.welcome;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A book that was open lately.
 *
 * @param name of its file
 * @param folder where it is, shortened in the middle, when another file has the same name; else
 *     empty
 */
record RecentBook(Path file, String name, String folder) {
  /** Characters of a folder that stand in a line of the card. */
  private static final int LINE = 38;

  private static final String LEFT_OUT = "…";

  static List<RecentBook> all(List<Path> files) {
    List<RecentBook> all = new ArrayList<>();
    for (Path file : files) {
      List<Path> alike = files.stream().filter(each -> folded(each).equals(folded(file))).toList();
      all.add(new RecentBook(file, name(file), alike.size() > 1 ? folder(file, alike) : ""));
    }
    return all;
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }

  private static String folded(Path file) {
    return name(file).toLowerCase(Locale.ROOT);
  }

  /** The whole folder where another, shortened, would read the same. */
  private static String folder(Path file, List<Path> alike) {
    String whole = parent(file);
    String brief = shortened(whole);
    boolean tells =
        alike.stream()
            .map(RecentBook::parent)
            .filter(each -> !each.equals(whole))
            .noneMatch(each -> shortened(each).equals(brief));
    return tells ? brief : whole;
  }

  private static String parent(Path file) {
    Path folder = file.getParent();
    return folder == null ? "" : folder.toString();
  }

  private static String shortened(String text) {
    int length = text.codePointCount(0, text.length());
    if (length <= LINE) {
      return text;
    }
    // The end of a folder tells more than its beginning.
    int first = LINE / 3;
    int last = LINE - 1 - first;
    return text.substring(0, text.offsetByCodePoints(0, first))
        + LEFT_OUT
        + text.substring(text.offsetByCodePoints(text.length(), -last));
  }
}
