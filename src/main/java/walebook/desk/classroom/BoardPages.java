package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.drawing.DotPlot;
import walebook.drawing.Drawing;

/**
 * What was found, cut into what a screen holds in large letters: the first sentence with the plot,
 * the further sentences, and a plot of many rows in parts that can be read from the back.
 */
final class BoardPages {
  private static final int SENTENCES = 8;
  private static final int LETTERS = 800;

  /** A plot of so many times the rows can still be read whole, if in smaller letters. */
  private static final double WHOLE = 1.25;

  private final int rows;
  private final List<Page> pages = new ArrayList<>();

  /** One screen. */
  record Page(List<String> says, @Nullable Drawing plot, String note, List<Finding.Photo> photos) {
    Page(List<String> says, @Nullable Drawing plot, String note) {
      this(says, plot, note, List.of());
    }
  }

  private BoardPages(int rows) {
    this.rows = rows;
  }

  /**
   * The screens, in order.
   *
   * @param rows how many rows of a plot can be read from the back
   */
  static List<Page> of(List<Finding> findings, int rows) {
    BoardPages all = new BoardPages(rows);
    findings.forEach(all::add);
    return all.pages;
  }

  private void add(Finding finding) {
    List<Drawing> plots = plots(finding.plot());
    List<String> says = finding.says();
    if (!finding.photos().isEmpty()) {
      pages.add(new Page(says, null, "", finding.photos()));
      return;
    }
    if (plots.isEmpty()) {
      sentences(says);
      return;
    }
    int first = Math.min(1, says.size());
    pages.add(new Page(says.subList(0, first), plots.get(0), finding.note()));
    sentences(says.subList(first, says.size()));
    plots.stream().skip(1).forEach(each -> pages.add(new Page(List.of(), each, finding.note())));
  }

  private List<Drawing> plots(@Nullable Drawing plot) {
    if (plot == null) {
      return List.of();
    }
    if (!(plot instanceof DotPlot dots) || dots.rows().size() <= rows) {
      return List.of(plot);
    }
    return dots.rows().size() <= WHOLE * rows ? List.of(plot) : List.copyOf(dots.parts(rows));
  }

  private void sentences(List<String> says) {
    List<String> some = new ArrayList<>();
    int letters = 0;
    for (String each : says) {
      boolean full = some.size() == SENTENCES || letters + each.length() > LETTERS;
      if (full && !some.isEmpty()) {
        pages.add(new Page(List.copyOf(some), null, ""));
        some.clear();
        letters = 0;
      }
      some.add(each);
      letters += each.length();
    }
    if (!some.isEmpty()) {
      pages.add(new Page(List.copyOf(some), null, ""));
    }
  }
}
