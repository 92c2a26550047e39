package walebook.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * The text of a lesson, ready to be shown a step at a time.
 *
 * @param title the level-1 heading; empty when there is none
 * @param opening what stands before the first step
 * @param steps one for each level-2 heading, in order
 */
public record LessonText(String title, List<Block> opening, List<Step> steps) {
  public LessonText {
    opening = List.copyOf(opening);
    steps = List.copyOf(steps);
  }

  /** A step: its heading, the line it stands in, and what is shown under it. */
  public record Step(String heading, int line, List<Block> blocks) {
    public Step {
      blocks = List.copyOf(blocks);
    }
  }

  /** Every picture shown, in order, those inside lists and quotes too. */
  public List<Block.Picture> pictures() {
    List<Block.Picture> found = new ArrayList<>();
    opening.forEach(each -> visit(each, found::add));
    steps.forEach(step -> step.blocks().forEach(each -> visit(each, found::add)));
    return List.copyOf(found);
  }

  private static void visit(Block block, Consumer<Block.Picture> found) {
    if (block instanceof Block.Picture picture) {
      found.accept(picture);
    } else if (block instanceof Block.Items list) {
      list.items().forEach(item -> item.forEach(each -> visit(each, found)));
    } else if (block instanceof Block.Quote quote) {
      quote.blocks().forEach(each -> visit(each, found));
    }
  }
}
