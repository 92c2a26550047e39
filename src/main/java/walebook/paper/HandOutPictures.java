package walebook.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.jspecify.annotations.Nullable;
import walebook.lesson.Block;
import walebook.lesson.LessonPack;
import walebook.lesson.LessonText;
import walebook.lesson.PackPicture;
import walebook.words.Words;

/** A lesson's pictures in a row of one height, each under the number of its step. */
final class HandOutPictures {
  private static final double GUTTER = 6;

  /** The row's height for each point of the text, mm. */
  private static final double HIGH = 3.3;

  private static final int FEW = 2;

  private final Sheets sheets;
  private final LessonPack pack;
  private final Words words;
  private final Type type;

  HandOutPictures(Sheets sheets, LessonPack pack, Words words, Type type) {
    this.sheets = sheets;
    this.pack = pack;
    this.words = words;
    this.type = type;
  }

  /** A picture and the number of the step that shows it. */
  private record Shown(PDImageXObject image, int step) {
    double ratio() {
      return (double) image.getWidth() / image.getHeight();
    }
  }

  void draw(Flow flow, boolean all) throws IOException {
    List<Shown> row = shown(all ? Integer.MAX_VALUE : FEW);
    if (row.isEmpty()) {
      return;
    }
    double ratios = row.stream().mapToDouble(Shown::ratio).sum();
    double gaps = GUTTER * (row.size() - 1);
    double high = Math.min(HIGH * type.points(), (flow.width() - gaps) / ratios);
    flow.need(high + type.leadingMm() + 2);
    double x = flow.left();
    for (Shown each : row) {
      String says = words.say("paper.hand-out.picture", each.step());
      flow.ink().text(x, flow.y() + type.ascentMm(), says, type);
      flow.ink().image(each.image(), x, flow.y() + type.leadingMm(), high * each.ratio(), high);
      x += high * each.ratio() + GUTTER;
    }
    flow.skip(high + type.leadingMm() + 2);
  }

  private List<Shown> shown(int most) {
    List<Shown> shown = new ArrayList<>();
    int nth = 0;
    for (LessonText.Step step : pack.text().steps()) {
      nth++;
      for (Block block : step.blocks()) {
        if (block instanceof Block.Picture picture && shown.size() < most) {
          PDImageXObject image = image(picture.shownFile());
          if (image != null) {
            shown.add(new Shown(image, nth));
          }
        }
      }
    }
    return shown;
  }

  private @Nullable PDImageXObject image(String file) {
    for (PackPicture each : pack.files().pictures()) {
      if (each.fileName().equals(file)) {
        return sheets.kept(each);
      }
    }
    return null;
  }
}
