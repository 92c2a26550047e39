package walebook.desk.lessons;

import java.util.List;
import javafx.scene.layout.VBox;
import walebook.desk.common.Texts;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.words.Words;

/** What a check found: where, by file, line, column and field, then what was found and wanted. */
final class ProblemsList extends VBox {
  ProblemsList(Words words, List<Problem> problems) {
    super(12);
    for (Problem each : problems) {
      VBox one = new VBox(2);
      String where = where(words, each.place());
      if (!where.isEmpty()) {
        one.getChildren().add(Texts.text(where, "strong"));
      }
      one.getChildren().add(Texts.text(words.sayAtField(each)));
      one.getStyleClass().add("board-line");
      getChildren().add(one);
    }
  }

  private static String where(Words words, Place place) {
    if (place instanceof Place.Spot spot && spot.line() > 0) {
      String at = words.say("desk.lessons.shelf.spot", spot.file(), spot.line(), spot.column());
      return spot.field().isEmpty() ? at : at + "  ·  " + spot.field();
    } else if (place instanceof Place.Spot spot) {
      return spot.file();
    }
    return place instanceof Place.Path path ? path.path() : "";
  }
}
