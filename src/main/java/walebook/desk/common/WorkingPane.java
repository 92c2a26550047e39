package walebook.desk.common;

import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.words.Words;
import walebook.working.Caution;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Step;
import walebook.working.Working;

/** Shows a working: title, verdict, sentence, cautions, and folded below how it was worked. */
public final class WorkingPane extends VBox {
  private final Words words;
  private final BooleanProperty open = new SimpleBooleanProperty(this, "open", false);

  public WorkingPane(Words words) {
    this.words = words;
    getStyleClass().add("working-pane");
    setFillWidth(true);
  }

  /** Whether the steps are unfolded; kept while workings change. */
  public BooleanProperty openProperty() {
    return open;
  }

  /** Shows another working, or none. */
  public void show(@Nullable Working working) {
    show(working, false);
  }

  /**
   * Shows another working, or none.
   *
   * @param reckonedOnly whether what is met rests on reckoning alone
   */
  public void show(@Nullable Working working, boolean reckonedOnly) {
    getChildren().clear();
    if (working == null) {
      return;
    }
    getChildren().add(Texts.caption(words.say(working.title())));
    if (working.verdict() != null) {
      getChildren().add(new VerdictBadge(words, working.verdict(), reckonedOnly));
    }
    getChildren().add(Texts.text(words.say(working.says()), "says"));
    for (Caution caution : working.cautions()) {
      String says = words.say("desk.common.caution", words.say(caution.says()));
      getChildren().add(Texts.text(says, "caution"));
    }
    Fold fold = new Fold(words.say("desk.common.how-worked"), lines(working));
    fold.openProperty().bindBidirectional(open);
    getChildren().add(fold);
  }

  private Node lines(Working working) {
    VBox lines = new VBox();
    lines.getStyleClass().add("working-lines");
    working.steps().forEach(step -> lines.getChildren().add(line(step)));
    list(lines, "desk.common.assumed", working.assumptions().stream().map(this::say).toList());
    list(lines, "desk.common.sources", working.sources().stream().map(this::say).toList());
    return lines;
  }

  private Node line(Step step) {
    VBox line = new VBox(Texts.caption(words.say(step.says())));
    line.getStyleClass().add("board-line");
    if (!step.formula().isEmpty()) {
      line.getChildren().add(Texts.text(step.formula()));
    }
    line.getChildren().add(Texts.text(step.numbers(), "numbers"));
    return line;
  }

  private void list(VBox lines, String titleKey, List<String> sayings) {
    if (sayings.isEmpty()) {
      return;
    }
    VBox list = new VBox(Texts.text(words.say(titleKey), "caption", "strong"));
    sayings.forEach(says -> list.getChildren().add(Texts.caption(says)));
    lines.getChildren().add(list);
  }

  private String say(Message message) {
    return words.say(message);
  }

  private String say(Source source) {
    String key =
        switch (source.kind()) {
          case STANDARD -> "desk.common.source.standard";
          case PUBLISHED -> "desk.common.source.published";
          case DEFINITION -> "desk.common.source.definition";
          case COMMON_PRACTICE -> "desk.common.source.common-practice";
          case MEASURED_HERE -> "desk.common.source.measured-here";
          case ESTIMATE -> "desk.common.source.estimate";
        };
    return words.say(key, source.citation());
  }
}
