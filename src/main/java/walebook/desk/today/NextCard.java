package walebook.desk.today;

import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.desk.common.PicturePane;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** My next piece: its settings in words and its stitch to scale. */
final class NextCard extends VBox {
  NextCard(Words words, TodayViewModel model, MyDay day) {
    getStyleClass().addAll("card", "next-piece");
    NextPiece next = day.next();
    // Who has only to measure needs no word about pieces.
    setVisible(next != null || !day.isMeasuredOnly());
    setManaged(isVisible());
    if (!model.lessonProperty().get().isEmpty()) {
      getChildren().add(Texts.caption(model.lessonProperty().get()));
    }
    if (next == null) {
      String key = day.plan().isEmpty() ? "desk.today.no-plan" : "desk.today.all-done";
      getChildren().add(Texts.text(words.say(key)));
      return;
    }
    FlowPane sideBySide = new FlowPane(settings(next));
    sideBySide.getStyleClass().add("side-by-side");
    if (next.stitch() != null) {
      sideBySide
          .getChildren()
          .add(
              new VBox(
                  Texts.caption(words.say("desk.today.as-sewn")),
                  new PicturePane(words, next.stitch())));
    }
    getChildren().add(Texts.section(words.say("desk.today.next", next.code())));
    if (!next.isInHand()) {
      getChildren().add(Texts.text(next.ofLesson(), "strong"));
    }
    getChildren().add(sideBySide);
  }

  private static VBox settings(NextPiece next) {
    VBox lines = new VBox();
    lines.getStyleClass().add("settings");
    next.settings().forEach(each -> lines.getChildren().add(Texts.text("• " + each)));
    return lines;
  }
}
