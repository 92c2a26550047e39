package walebook.desk.common;

import java.util.Locale;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import walebook.drawing.VerdictMark;
import walebook.words.Words;
import walebook.working.Verdict;

/** A verdict as its mark with the word beside it. */
public final class VerdictBadge extends HBox {
  private final Words words;
  private final PicturePane mark;
  private final Label word = Texts.text("", "verdict-word");

  public VerdictBadge(Words words, Verdict verdict) {
    this(words, verdict, false);
  }

  /**
   * A verdict.
   *
   * @param reckonedOnly whether what is met rests on reckoning alone; the word says so
   */
  public VerdictBadge(Words words, Verdict verdict, boolean reckonedOnly) {
    this.words = words;
    mark = new PicturePane(words);
    // Beside a long word the mark would be the one to give way.
    mark.setMinWidth(USE_PREF_SIZE);
    setAccessibleRole(AccessibleRole.TEXT);
    getChildren().setAll(mark, word);
    show(verdict, reckonedOnly);
  }

  /** Shows another verdict. */
  public void show(Verdict verdict) {
    show(verdict, false);
  }

  private void show(Verdict verdict, boolean reckonedOnly) {
    String says = words.say(VerdictMark.key(verdict, reckonedOnly));
    mark.show(new VerdictMark(verdict));
    word.setText(says);
    setAccessibleText(says);
    String style = verdict.name().toLowerCase(Locale.ROOT).replace('_', '-');
    getStyleClass().setAll("verdict-badge", style);
  }
}
