package walebook.desk.look;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import walebook.drawing.Palette;

/** Light for the day, dark for the evening. */
public enum Theme {
  LIGHT,
  DARK;

  /** The colours pictures are drawn in. */
  public Palette palette() {
    return this == LIGHT ? Palette.LIGHT : Palette.DARK;
  }

  public Theme other() {
    return this == LIGHT ? DARK : LIGHT;
  }

  String base() {
    return this == LIGHT
        ? new PrimerLight().getUserAgentStylesheet()
        : new PrimerDark().getUserAgentStylesheet();
  }

  String tokens() {
    return this == LIGHT ? "tokens-light.css" : "tokens-dark.css";
  }
}
