package walebook.paper;

import java.util.List;

/**
 * How much of a lesson goes on its page, and how large.
 *
 * @param points of the text
 * @param pictureMm height of the row of pictures at most
 * @param pictures how many at most
 * @param sentences of a step's text
 * @param items of any list
 * @param letters of any one sentence or point
 */
record HandOutCut(
    double points, double pictureMm, int pictures, int sentences, int items, int letters) {
  private static final int ALL = 1000;

  /** From everything at a good size to what fits whatever the pack says. */
  static final List<HandOutCut> RICHEST_FIRST =
      List.of(
          new HandOutCut(9.5, 46, ALL, 2, ALL, 4000),
          new HandOutCut(9, 42, ALL, 2, ALL, 4000),
          new HandOutCut(8.5, 40, ALL, 1, ALL, 4000),
          new HandOutCut(8, 36, ALL, 1, ALL, 4000),
          new HandOutCut(8, 30, ALL, 1, ALL, 4000),
          new HandOutCut(8, 30, 4, 1, 5, 400),
          new HandOutCut(8, 26, 4, 1, 4, 400),
          new HandOutCut(8, 24, 3, 1, 4, 200),
          new HandOutCut(8, 26, 2, 1, 3, 160),
          new HandOutCut(8, 24, 2, 0, 3, 240),
          new HandOutCut(8, 20, 2, 0, 3, 240),
          new HandOutCut(8, 12, 0, 0, 2, 80),
          new HandOutCut(8, 12, 0, 0, 1, 60));

  /** Whether anything but size is given up. */
  boolean shortens() {
    return pictures < ALL || items < ALL;
  }

  /** Whether every caution stands there whole. */
  boolean keepsCautions() {
    return items > 2;
  }

  /** The beginning of a text, to the end of a sentence where one fits. */
  String beginning(String text) {
    String flat = text.strip().replaceAll("\\s+", " ");
    StringBuilder kept = new StringBuilder();
    int taken = 0;
    for (String sentence : flat.split("(?<=[.!?])\\s+(?=\\p{Lu})", -1)) {
      if (taken == sentences) {
        break;
      }
      kept.append(kept.isEmpty() ? "" : " ").append(sentence);
      taken++;
    }
    return shortened(kept.toString());
  }

  String shortened(String text) {
    String flat = text.strip().replaceAll("\\s+", " ");
    if (flat.length() <= letters) {
      return flat;
    }
    int end = flat.offsetByCodePoints(0, Math.min(letters, flat.codePointCount(0, flat.length())));
    return flat.substring(0, end).stripTrailing() + "…";
  }

  /** As many of a list as are kept. */
  <T> List<T> some(List<T> list) {
    return some(list, 1);
  }

  /** So many times as many. */
  <T> List<T> some(List<T> list, int times) {
    return list.subList(0, Math.min(times * items, list.size()));
  }
}
