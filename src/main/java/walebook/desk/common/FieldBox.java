package walebook.desk.common;

import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.problem.Problem;
import walebook.words.Words;

/** A label over a control, with room for what was understood and what is wrong below it. */
public class FieldBox extends VBox {
  private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");
  private static final PseudoClass CHANGED = PseudoClass.getPseudoClass("changed");

  private final Words words;
  private final Region control;
  private final Label title;
  private String name;
  private String chosen = "";
  private final Label understood = Texts.text("", "understood");
  private final Label changed = Texts.text("", "field-changed");
  private final Label problem = Texts.text("", "field-problem");

  /** A field made of any control, or of several in one region. */
  // Newer compilers warn of what a node does here with itself; filling a node is what this is for.
  @SuppressWarnings("this-escape")
  public FieldBox(Words words, String label, Region control) {
    this.words = words;
    this.control = control;
    this.name = label;
    title = Texts.text(label, "field-label");
    title.setLabelFor(control);
    control.setAccessibleText(label);
    control.setMaxWidth(Double.MAX_VALUE);
    getStyleClass().add("field");
    hideWhenEmpty(understood);
    hideWhenEmpty(changed);
    hideWhenEmpty(problem);
    getChildren().setAll(title, control, understood, changed, problem);
  }

  /** Calls the field by another name, such as one with another unit. */
  public final void rename(String label) {
    name = label;
    title.setText(label);
    control.setAccessibleText(
        problem.getText().isEmpty() ? heard() : heard() + ". " + problem.getText());
  }

  /** Shows a problem under the control, or none. */
  public final void showProblem(@Nullable Problem now) {
    String says = now == null ? "" : words.sayAtField(now);
    problem.setText(says);
    problem.getStyleClass().setAll("label", "field-problem");
    if (now != null && !now.refuses()) {
      problem.getStyleClass().add("asks");
    }
    pseudoClassStateChanged(REFUSED, now != null && now.refuses());
    control.setAccessibleText(says.isEmpty() ? heard() : heard() + ". " + says);
  }

  /** Lets the field be heard with what is chosen in it, whole even where the screen cuts it. */
  protected final void showChosen(String says) {
    chosen = says;
    control.setAccessibleText(heard());
  }

  private String heard() {
    return chosen.isEmpty() ? name : name + ": " + chosen;
  }

  /** The sentence shown under the control; empty when there is none. */
  public final String problemShown() {
    return problem.getText();
  }

  /** Shows how the text was understood; nothing when empty. */
  public final void showUnderstood(String says) {
    understood.setText(says.isEmpty() ? "" : words.say("desk.common.understood", says));
  }

  /** Marks the field as the one that differs, saying from what; no mark when empty. */
  public final void showChanged(String says) {
    changed.setText(says);
    pseudoClassStateChanged(CHANGED, !says.isEmpty());
    control.setAccessibleText(says.isEmpty() ? heard() : heard() + ", " + says);
  }

  private static void hideWhenEmpty(Label label) {
    label.visibleProperty().bind(label.textProperty().map(says -> !says.isEmpty()));
    label.managedProperty().bind(label.visibleProperty());
  }
}
