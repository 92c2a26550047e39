package walebook.desk.common;

import javafx.scene.control.TextArea;
import walebook.words.Words;

/** A field for several lines of text; Enter begins a new line, Tab leaves it. */
public final class LinesField extends FieldBox {
  private final TextArea area;

  /** A field of a form, so many lines high. */
  public LinesField(Words words, String label, String prompt, int lines, FormFields.Field of) {
    this(words, label, prompt, lines, of, new TextArea());
  }

  private LinesField(
      Words words, String label, String prompt, int lines, FormFields.Field of, TextArea area) {
    super(words, label, area);
    this.area = area;
    area.setPromptText(prompt);
    area.setPrefRowCount(lines);
    area.setWrapText(true);
    NextField.onTab(area);
    area.textProperty().bindBidirectional(of.text());
    of.problem().addListener((from, old, now) -> showProblem(now));
    showProblem(of.problem().get());
  }

  /** The area itself, for focus. */
  public TextArea area() {
    return area;
  }
}
