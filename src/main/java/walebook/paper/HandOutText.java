package walebook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import walebook.lesson.Block;
import walebook.lesson.LessonText;
import walebook.lesson.Run;

/** A lesson's text in whole sentences. */
final class HandOutText {
  private HandOutText() {}

  /** The text with its white space made one blank. */
  static String flat(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  static List<String> sentences(String text) {
    return List.of(flat(text).split("(?<=[.!?])\\s+(?=\\p{Lu})", -1));
  }

  /** So many sentences from the beginning. */
  static String beginning(List<String> sentences, int most) {
    return sentences.stream().limit(most).collect(Collectors.joining(" "));
  }

  /**
   * The sentences of the first paragraph; one that ends in a colon takes the list it announces
   * along as part of its last sentence.
   */
  static List<String> lead(List<Block> blocks) {
    for (int i = 0; i < blocks.size(); i++) {
      if (blocks.get(i) instanceof Block.Paragraph paragraph) {
        String text = flat(Run.plain(paragraph.runs()));
        if (!text.endsWith(":")) {
          return sentences(text);
        }
        boolean announces = i + 1 < blocks.size() && blocks.get(i + 1) instanceof Block.Items;
        if (announces && blocks.get(i + 1) instanceof Block.Items list && !list.numbered()) {
          return with(sentences(text), points(list));
        }
        return sentences(text.substring(0, text.length() - 1) + ".");
      }
    }
    return List.of();
  }

  private static List<String> with(List<String> sentences, String points) {
    List<String> all = new ArrayList<>(sentences);
    all.set(all.size() - 1, all.get(all.size() - 1) + " " + points);
    return all;
  }

  private static String points(Block.Items list) {
    return list.items().stream()
        .map(each -> String.join(" ", lead(each)).replaceAll("[.;,]$", ""))
        .collect(Collectors.joining("; ", "", "."));
  }

  /**
   * A point of a step's lists.
   *
   * @param numbered whether it has its place in an order
   */
  record Point(boolean numbered, List<String> sentences) {
    Point {
      sentences = List.copyOf(sentences);
    }

    /** Whether it stands by itself, rather than as the end of a sentence before it. */
    boolean isWhole() {
      return String.join(" ", sentences).matches("(?s)\\p{Lu}.*[.!?]");
    }
  }

  /** The points of a step's lists, but for a list that its lead takes along. */
  static List<Point> points(LessonText.Step step) {
    List<Point> points = new ArrayList<>();
    List<Block> blocks = step.blocks();
    int lead =
        IntStream.range(0, blocks.size()).filter(at -> isText(blocks, at)).findFirst().orElse(-1);
    for (int i = 0; i < blocks.size(); i++) {
      if (blocks.get(i) instanceof Block.Items list) {
        boolean taken =
            !list.numbered() && lead >= 0 && i == lead + 1 && isAnnouncing(blocks, lead);
        if (!taken) {
          list.items().forEach(each -> points.add(new Point(list.numbered(), lead(each))));
        }
      }
    }
    return points;
  }

  private static boolean isText(List<Block> blocks, int at) {
    return blocks.get(at) instanceof Block.Paragraph;
  }

  private static boolean isAnnouncing(List<Block> blocks, int at) {
    return blocks.get(at) instanceof Block.Paragraph paragraph
        && flat(Run.plain(paragraph.runs())).endsWith(":");
  }
}
