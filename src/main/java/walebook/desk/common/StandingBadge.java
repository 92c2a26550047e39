package walebook.desk.common;

import java.util.Locale;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import walebook.compare.assessed.Standing;
import walebook.drawing.VerdictMark;
import walebook.words.Words;
import walebook.working.Verdict;

/** How far a criterion or a piece has come: a mark told by its shape, with words beside it. */
public final class StandingBadge extends HBox {

  /** A standing with what is said of it. */
  public StandingBadge(Words words, Standing standing, String says) {
    Label word = new Label(says);
    word.getStyleClass().add("verdict-word");
    word.setMinWidth(Region.USE_PREF_SIZE);
    setAccessibleRole(AccessibleRole.TEXT);
    setAccessibleText(says);
    Verdict verdict = verdict(standing);
    String style = verdict.name().toLowerCase(Locale.ROOT).replace('_', '-');
    getStyleClass().setAll("verdict-badge", "standing-badge", style);
    if (standing != Standing.NOTHING) {
      getChildren().add(mark(words, verdict));
    }
    getChildren().add(word);
  }

  /** Of one size whatever room there is: in a cell of a table it would grow with the column. */
  private static PicturePane mark(Words words, Verdict verdict) {
    PicturePane mark = new PicturePane(words, new VerdictMark(verdict));
    mark.getStyleClass().add("standing-mark");
    return mark;
  }

  private static Verdict verdict(Standing standing) {
    return switch (standing) {
      case MET -> Verdict.MET;
      case REASONED -> Verdict.TOO_CLOSE;
      case BELOW -> Verdict.NOT_MET;
      case UNCHECKED, NOTHING -> Verdict.NOT_KNOWN;
    };
  }
}
