package walebook.desk.decide;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import walebook.desk.common.PicturePane;
import walebook.desk.common.SavePicture;
import walebook.desk.common.Segments;
import walebook.desk.common.Texts;
import walebook.drawing.GarmentPictures;
import walebook.words.Words;

/** The pictures of a sheet: which kind, of which girth or opening, and saving it as a file. */
final class PicturesPane extends VBox {
  private final Words words;
  private final PicturesViewModel model;
  private final PicturePane picture;
  private final VBox choose = new VBox(8);
  private List<GarmentPictures.Kind> kinds = List.of();
  private List<String> abouts = List.of();

  /**
   * Pictures of one sheet.
   *
   * @param save asks for a file and writes the picture there
   */
  PicturesPane(Words words, PicturesViewModel model, SavePicture save) {
    super(8);
    this.words = words;
    this.model = model;
    this.picture = new PicturePane(words);
    Label nothing = Texts.text(words.say("desk.decide.pictures.none"), "soft");
    Button button = new Button(words.say("desk.common.save-picture"));
    button.getStyleClass().add("quiet");
    button.setOnAction(
        pressed -> {
          GarmentPictures.One now = model.shownProperty().get();
          if (now != null) {
            save.save(picture.image(), words.say(now.about()));
          }
        });
    getChildren().setAll(nothing, choose, picture, button);
    nothing.visibleProperty().bind(model.shownProperty().isNull());
    nothing.managedProperty().bind(nothing.visibleProperty());
    button.visibleProperty().bind(model.shownProperty().isNotNull());
    model.shownProperty().addListener((from, old, now) -> show());
    model.allProperty().addListener((from, old, now) -> show());
    show();
  }

  private void show() {
    GarmentPictures.One now = model.shownProperty().get();
    picture.show(now == null ? null : now.drawing());
    List<GarmentPictures.Kind> nowKinds = model.kinds();
    List<String> nowAbouts = model.abouts();
    if (nowKinds.equals(kinds) && nowAbouts.equals(abouts)) {
      return;
    }
    kinds = nowKinds;
    abouts = nowAbouts;
    choose.getChildren().clear();
    if (kinds.size() > 1) {
      Segments<GarmentPictures.Kind> row =
          new Segments<>(kinds, model.kindProperty(), each -> words.say(each.sayKey()));
      row.getStyleClass().add("picture-kinds");
      choose.getChildren().add(row);
    }
    if (abouts.size() > 1) {
      choose.getChildren().add(which(model.aboutProperty()));
    }
  }

  private ComboBox<String> which(ObjectProperty<String> about) {
    ComboBox<String> box = new ComboBox<>();
    box.getItems().setAll(abouts);
    box.setValue(abouts.contains(about.get()) ? about.get() : abouts.get(0));
    box.setMaxWidth(Double.MAX_VALUE);
    box.setAccessibleText(words.say("desk.decide.pictures.which"));
    box.valueProperty()
        .addListener(
            (from, old, now) -> {
              if (now != null) {
                about.set(now);
              }
            });
    return box;
  }
}
