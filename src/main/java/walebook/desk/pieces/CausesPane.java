package walebook.desk.pieces;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.Fold;
import walebook.desk.common.Texts;
import walebook.seam.NextTry;
import walebook.words.Words;

/** Likely causes of what was seen, each with why it stands there and what to sew next. */
final class CausesPane extends VBox {
  private final Words words;
  private final String doIt;
  private final Consumer<NextTry> choose;
  private List<CauseCard> shown = List.of();
  private @Nullable Node first;

  /**
   * Makes it empty.
   *
   * @param doIt sentence of the button, with a place for the change
   * @param choose begins the next attempt with a change
   */
  CausesPane(Words words, String doIt, Consumer<NextTry> choose) {
    this.words = words;
    this.doIt = doIt;
    this.choose = choose;
    getStyleClass().add("causes");
    setId("causes");
    setVisible(false);
    setManaged(false);
  }

  /** Shows the causes of each fault; nothing is built anew while they stay the same. */
  void show(List<CauseCard> cards) {
    if (cards.equals(shown)) {
      return;
    }
    shown = List.copyOf(cards);
    first = null;
    getChildren().clear();
    for (int i = 0; i < cards.size(); i++) {
      getChildren().add(card(cards.get(i), i == cards.size() - 1));
    }
    if (!cards.isEmpty()) {
      getChildren().add(Texts.caption(words.say("desk.pieces.causes-guide")));
    }
    setVisible(!cards.isEmpty());
    setManaged(!cards.isEmpty());
  }

  /** Puts the focus on the first change that can be chosen. */
  void focusFirst() {
    if (first != null) {
      first.requestFocus();
    }
  }

  /** The fault chosen last stands open, the ones before are folded. */
  private Node card(CauseCard card, boolean open) {
    VBox lines = new VBox();
    lines.getStyleClass().add("cause-lines");
    int place = 1;
    for (CauseCard.Line each : card.likely()) {
      lines.getChildren().add(line(each, place++, open));
    }
    if (!card.ruledOut().isEmpty()) {
      VBox out = new VBox();
      out.getStyleClass().add("cause-lines");
      card.ruledOut().forEach(each -> out.getChildren().add(ruledOut(each)));
      lines.getChildren().add(new Fold(words.say("desk.pieces.ruled-out"), out));
    }
    Fold fold = new Fold(card.title(), lines);
    fold.openProperty().set(open);
    return fold;
  }

  private Node line(CauseCard.Line cause, int place, boolean open) {
    String says = words.say("desk.pieces.cause", place, cause.says());
    VBox line = new VBox(Texts.text(says, "strong"), Texts.caption(cause.why()));
    line.getStyleClass().addAll("cause", cause.speaks() ? "speaks" : "open");
    // Where there is little height the pane scrolls, rather than cut a button's second line off.
    line.setMinHeight(Region.USE_PREF_SIZE);
    NextTry next = cause.next();
    if (next == null) {
      line.getChildren().add(Texts.caption(words.say("desk.pieces.nothing-left")));
      return line;
    }
    String sewSays = words.say(doIt, cause.nextSays());
    Button sew = new Button(sewSays);
    sew.setWrapText(true);
    sew.setMaxWidth(Double.MAX_VALUE);
    sew.getStyleClass().add("cause-next");
    sew.setAccessibleText(cause.says() + ". " + cause.why() + " " + sewSays);
    sew.setOnAction(pressed -> choose.accept(next));
    if (first == null && open) {
      first = sew;
    }
    line.getChildren().add(sew);
    return line;
  }

  private static Node ruledOut(CauseCard.Line cause) {
    VBox line = new VBox(Texts.text(cause.says()), Texts.caption(cause.why()));
    line.getStyleClass().addAll("cause", "out");
    return line;
  }
}
