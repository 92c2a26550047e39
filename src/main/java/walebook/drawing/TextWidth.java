package walebook.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Estimates how wide a text is, so that pictures can be laid out without a screen. Advance widths
 * are those of Atkinson Hyperlegible Next Regular, measured; letters beyond ASCII count as wide.
 */
final class TextWidth {
  private static final int[] PER_MILLE = {
    280, 286, 301, 651, 592, 919, 731, 160, 299, 299, 485, 606, 210, 362, 210, 387, 648, 407, 548,
    576, 614, 588, 598, 510, 615, 595, 210, 210, 553, 628, 553, 480, 778, 626, 613, 645, 669, 569,
    552, 694, 694, 392, 512, 631, 541, 824, 693, 714, 592, 724, 614, 592, 558, 690, 593, 856, 623,
    575, 607, 317, 387, 344, 552, 372, 243, 525, 566, 485, 564, 538, 314, 558, 550, 252, 245, 492,
    262, 845, 550, 548, 566, 574, 349, 471, 326, 540, 461, 684, 481, 449, 460, 344, 237, 344, 555
  };
  private static final int OTHER = 700;

  private TextWidth() {}

  /** Width in picture units at a type size. */
  static double of(String text, double size) {
    return text.codePoints().map(TextWidth::perMille).sum() * size / 1000;
  }

  /** The text, shortened at its end with an ellipsis when it is wider than the room for it. */
  static String fit(String text, double size, double room) {
    if (of(text, size) <= room) {
      return text;
    }
    int end = text.length();
    while (end > 0 && of(text.substring(0, end).stripTrailing() + "…", size) > room) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end).stripTrailing() + "…";
  }

  /** The text on one line, or broken at a blank into two of which the second is shortened. */
  static List<String> inTwo(String text, double size, double room) {
    if (of(text, size) <= room) {
      return List.of(text);
    }
    int at = text.lastIndexOf(' ');
    while (at > 0 && of(text.substring(0, at), size) > room) {
      at = text.lastIndexOf(' ', at - 1);
    }
    return at <= 0
        ? List.of(fit(text, size, room))
        : List.of(text.substring(0, at), fit(text.substring(at + 1), size, room));
  }

  /** The text in as many lines as it takes, broken at blanks; a longer word is shortened. */
  static List<String> lines(String text, double size, double room) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && of(longer, size) > room) {
        lines.add(line.toString());
        longer = word;
      }
      line.setLength(0);
      line.append(fit(longer, size, room));
    }
    lines.add(line.toString());
    return lines;
  }

  private static int perMille(int letter) {
    return letter >= 32 && letter < 127 ? PER_MILLE[letter - 32] : OTHER;
  }
}
