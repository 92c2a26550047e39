package walebook.lesson;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.jspecify.annotations.Nullable;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Reads lesson.md (CommonMark, with tables) into steps. */
final class ReadText {
  private final String file;
  private final List<Problem> problems = new ArrayList<>();

  ReadText(String file) {
    this.file = file;
  }

  /** The text and what is wrong with it; there is always a text to show. */
  record Result(LessonText text, List<Problem> problems) {}

  Result read(String markdown) {
    Node document = parser().parse(markdown);
    ReadBlocks blocks = new ReadBlocks(file, problems);
    String title = "";
    List<Block> opening = new ArrayList<>();
    List<LessonText.Step> steps = new ArrayList<>();
    @Nullable String heading = null;
    int line = 0;
    List<Block> under = opening;
    for (Node node = document.getFirstChild(); node != null; node = node.getNext()) {
      if (node instanceof Heading head && head.getLevel() == 2) {
        close(steps, heading, line, under);
        heading = blocks.words(head);
        line = ReadBlocks.line(head);
        under = new ArrayList<>();
      } else if (node instanceof Heading head && head.getLevel() == 1 && title.isEmpty()) {
        title = blocks.words(head);
      } else {
        under.addAll(blocks.block(node, 0));
      }
    }
    close(steps, heading, line, under);
    if (steps.isEmpty()) {
      problems.add(Problem.refuse("pack.no-steps", spot(1), "", "## …"));
    }
    return new Result(new LessonText(title, opening, steps), List.copyOf(problems));
  }

  private static void close(
      List<LessonText.Step> steps, @Nullable String heading, int line, List<Block> under) {
    if (heading != null) {
      steps.add(new LessonText.Step(heading, line, under));
    }
  }

  private Place spot(int line) {
    return new Place.Spot(file, line, 1, "");
  }

  private static Parser parser() {
    return Parser.builder()
        .extensions(List.of(TablesExtension.create()))
        .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
        .maxOpenBlockParsers(3 * PackLimits.TEXT_DEPTH)
        .maxInlineNesting(3 * PackLimits.TEXT_DEPTH)
        .build();
  }
}
