package walebook.desk.look;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.application.Application;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.scene.text.Font;

/** The chosen theme and text size, worn by every scene given to {@link #dress}. */
public final class Look {
  private static final List<String> FONTS =
      List.of(
          "AtkinsonHyperlegibleNext_400Regular.ttf",
          "AtkinsonHyperlegibleNext_600SemiBold.ttf",
          "AtkinsonHyperlegibleNext_700Bold.ttf",
          "AtkinsonHyperlegibleMono_400Regular.ttf");

  private final ObjectProperty<Theme> theme;
  private final ObjectProperty<TextSize> textSize;

  public Look(Theme theme, TextSize textSize) {
    this.theme = new SimpleObjectProperty<>(this, "theme", theme);
    this.textSize = new SimpleObjectProperty<>(this, "textSize", textSize);
    FONTS.forEach(name -> Font.loadFont(resource("/walebook/desk/fonts/" + name), 12));
  }

  public ObjectProperty<Theme> themeProperty() {
    return theme;
  }

  public ObjectProperty<TextSize> textSizeProperty() {
    return textSize;
  }

  public Theme theme() {
    return theme.get();
  }

  public TextSize textSize() {
    return textSize.get();
  }

  /** Puts the look on a scene and keeps it up to date. */
  public void dress(Scene scene) {
    wear(scene);
    theme.addListener((from, old, now) -> wear(scene));
    textSize.addListener((from, old, now) -> wear(scene));
  }

  private void wear(Scene scene) {
    // For the whole program, since lists and hints that pop up have scenes of their own.
    Application.setUserAgentStylesheet(theme().base());
    scene
        .getStylesheets()
        .setAll(
            resource(theme().tokens()),
            resource("controls.css"),
            resource("tables.css"),
            resource("common.css"),
            resource("shell.css"),
            size());
  }

  private String size() {
    String css = String.format(Locale.ROOT, ".root { -fx-font-size: %.2fpx; }", textSize().px());
    byte[] bytes = css.getBytes(StandardCharsets.UTF_8);
    return "data:text/css;base64," + Base64.getEncoder().encodeToString(bytes);
  }

  private static String resource(String name) {
    return Objects.requireNonNull(Look.class.getResource(name), name).toExternalForm();
  }
}
