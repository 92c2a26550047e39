package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LessonTextTest {
  @Test
  void stepsAreCutAtSecondHeadings() {
    LessonText text = read("# Title\n\nBefore.\n\n## One\n\nA.\n\n### Within\n\n## Two *x*\n");
    assertThat(text.title()).isEqualTo("Title");
    assertThat(text.opening()).containsExactly(new Block.Paragraph(List.of(plain("Before."))));
    assertThat(text.steps()).extracting(LessonText.Step::heading).containsExactly("One", "Two x");
    assertThat(text.steps()).extracting(LessonText.Step::line).containsExactly(5, 11);
    assertThat(text.steps().get(0).blocks())
        .containsExactly(
            new Block.Paragraph(List.of(plain("A."))),
            new Block.Heading(3, List.of(plain("Within"))));
  }

  @Test
  void wordsKeepTheirStyle() {
    LessonText text =
        read("## S\n\nSew **two *more* layers** and *wait*, `L 2.5`\nthen [go](x).\n");
    assertThat(text.steps().get(0).blocks())
        .containsExactly(
            new Block.Paragraph(
                List.of(
                    plain("Sew "),
                    new Run("two more layers", Run.Style.STRONG),
                    plain(" and "),
                    new Run("wait", Run.Style.EMPHASIS),
                    plain(", "),
                    new Run("L 2.5", Run.Style.TYPED),
                    plain(" then go."))));
  }

  @Test
  void listsTablesAndPicturesStandAlone() {
    LessonText text =
        read(
            """
            ## S

            3. a
            4. b
               - c

            | h | i |
            |---|---|
            | 1 | **2** |

            see ![a seam, open](s.svg) here

            > note

            ---

                typed
            """);
    List<Block> blocks = text.steps().get(0).blocks();
    Block.Items list = (Block.Items) blocks.get(0);
    assertThat(list.numbered()).isTrue();
    assertThat(list.start()).isEqualTo(3);
    assertThat(list.items()).hasSize(2);
    assertThat(((Block.Items) list.items().get(1).get(1)).numbered()).isFalse();
    Block.Table table = (Block.Table) blocks.get(1);
    assertThat(table.header()).containsExactly(List.of(plain("h")), List.of(plain("i")));
    assertThat(table.rows())
        .containsExactly(List.of(List.of(plain("1")), List.of(new Run("2", Run.Style.STRONG))));
    assertThat(blocks.get(3)).isEqualTo(new Block.Picture("s.svg", "a seam, open", 11));
    assertThat(((Block.Picture) blocks.get(3)).shownFile()).isEqualTo("s.png");
    assertThat(blocks.get(5)).isInstanceOf(Block.Quote.class);
    assertThat(blocks.get(6)).isEqualTo(new Block.Divider());
    assertThat(blocks.get(7)).isEqualTo(new Block.Typed("typed"));
    assertThat(text.pictures()).hasSize(1);
  }

  @Test
  void aLongLineOfMarksIsReadInTime() {
    ReadText.Result result = new ReadText("lesson.md").read("## S\n\n" + "*a _b ".repeat(40_000));
    assertThat(result.text().steps()).hasSize(1);
  }

  private static Run plain(String text) {
    return new Run(text, Run.Style.PLAIN);
  }

  private static LessonText read(String markdown) {
    ReadText.Result result = new ReadText("lesson.md").read(markdown);
    assertThat(result.problems()).isEmpty();
    return result.text();
  }
}
