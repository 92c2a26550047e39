package walebook.paper;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import walebook.paper.HandOutPart.Kind;
import walebook.words.Words;

/** Chooses what of a lesson goes on its page, and how large. */
final class HandOutFit {
  /** Sizes in points at which everything may stand, the largest first. */
  private static final double[] COMFORTABLE = {10.5, 10, 9.5, 9};

  /** Sizes in points at which every step's points stay whole, down to what a photocopy keeps. */
  private static final double[] GOOD = {9, 8.5, 8};

  /** How many parts are tried one by one behind the first that finds no room. */
  private static final int TRIES = 24;

  private final Sheets sheets;
  private final HandOutPaper paper;
  private final Words words;
  private final List<HandOutPart> parts;

  private HandOutFit(Sheets sheets, HandOutPaper paper, Words words) {
    this.sheets = sheets;
    this.paper = paper;
    this.words = words;
    this.parts = HandOutPart.of(paper.pack());
  }

  /** The page; the caller closes it. */
  static Sheets page(PaperSize size, HandOutPaper paper, Words words) throws IOException {
    Sheets sheets = Sheets.upright(size);
    new HandOutFit(sheets, paper, words).draw();
    return sheets;
  }

  private void draw() throws IOException {
    for (double points : COMFORTABLE) {
      if (fits(points, Set.copyOf(parts))) {
        return;
      }
    }
    int whole = HandOutPart.upTo(Kind.MORE_POINTS, parts);
    int most = 0;
    for (double points : GOOD) {
      most = most(points);
      if (most >= whole) {
        fill(points, most);
        return;
      }
    }
    fill(GOOD[GOOD.length - 1], most);
  }

  /** How many of the parts fit, taken in their order. */
  private int most(double points) throws IOException {
    int fit = 0;
    int over = parts.size() + 1;
    while (over - fit > 1) {
      int half = (fit + over) / 2;
      if (fits(points, Set.copyOf(parts.subList(0, half)))) {
        fit = half;
      } else {
        over = half;
      }
    }
    return fit;
  }

  /** Draws those, and of the ones behind them each that still finds room. */
  private void fill(double points, int most) throws IOException {
    Set<HandOutPart> kept = new HashSet<>(parts.subList(0, most));
    int end = Math.min(parts.size(), most + TRIES);
    for (HandOutPart each : parts.subList(most, end)) {
      kept.add(each);
      if (!fits(points, kept)) {
        kept.remove(each);
      }
    }
    if (!fits(points, kept)) {
      throw new IllegalStateException("what fitted before fits again");
    }
  }

  private boolean fits(double points, Set<HandOutPart> kept) throws IOException {
    sheets.again();
    new HandOutPage(sheets, paper, words, points, kept).draw(kept.size() < parts.size());
    return sheets.count() == 1;
  }
}
