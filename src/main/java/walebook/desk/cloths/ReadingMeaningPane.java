package walebook.desk.cloths;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.VBox;
import walebook.desk.common.PicturePane;
import walebook.desk.common.WorkingPane;
import walebook.drawing.GaugePicture;
import walebook.words.Words;

/** What a reading means while it is typed: the gauge to scale, stretch, growth, recovery. */
final class ReadingMeaningPane extends VBox {
  private static final int WORKINGS = 3;

  private final PicturePane picture;
  private final List<WorkingPane> panes = new ArrayList<>();

  ReadingMeaningPane(Words words, ReadingFormViewModel model) {
    super(16);
    picture = new PicturePane(words);
    getChildren().add(picture);
    for (int i = 0; i < WORKINGS; i++) {
      WorkingPane pane = new WorkingPane(words);
      panes.add(pane);
      getChildren().add(pane);
    }
    model.meaningProperty().addListener((from, old, now) -> show(now));
    show(model.meaningProperty().get());
  }

  private void show(ReadingFormViewModel.Meaning meaning) {
    picture.show(new GaugePicture(meaning.gauge(), meaning.unit()));
    for (int i = 0; i < WORKINGS; i++) {
      panes.get(i).show(i < meaning.workings().size() ? meaning.workings().get(i) : null);
    }
  }
}
