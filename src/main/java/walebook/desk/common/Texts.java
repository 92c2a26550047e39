package walebook.desk.common;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Labels that wrap and carry a style. */
public final class Texts {
  private Texts() {}

  /** Text that wraps within its parent. */
  public static Label text(String says, String... styles) {
    Label label = new Label(says);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.getStyleClass().addAll(styles);
    return label;
  }

  /** Small secondary text. */
  public static Label caption(String says) {
    return text(says, "caption");
  }

  /** The heading of a part of a place. */
  public static Label section(String says) {
    return text(says, "section-title");
  }
}
