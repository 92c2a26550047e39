package walebook.desk.look;

import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCombination;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import walebook.desk.shell.PlaceEntry;
import walebook.desk.shell.Shell;
import walebook.words.Words;

/**
 * Shows every shared control and picture, to be looked at. Run {@link #main} with nothing for a
 * window, or with a folder for PNG files of all places in light and dark, at 100 and 200 %.
 */
public final class LookSheet {
  private LookSheet() {}

  /** Opens the window or writes the files. */
  public static void main(String[] args) {
    Application.launch(Sheet.class, args);
  }

  /** The window. */
  public static final class Sheet extends Application {
    @Override
    public void start(Stage stage) throws IOException {
      Words words = Words.english();
      Look look = new Look(Theme.LIGHT, TextSize.USUAL);
      LookPlaces places = new LookPlaces(words);
      Shell shell =
          new Shell(
              words,
              look,
              List.of(
                  entry("form", "Test pieces", 1, places::form),
                  entry("pictures", "Cloths", 2, places::pictures),
                  entry("plot", "Class", 3, places::plot),
                  entry("faults", "Lessons", 4, places::faults),
                  entry("empty", "Term record", 5, places::empty)));
      shell.bookName("Harbour hall, Tuesday evening");
      Scene scene = new Scene(shell, 1280, 800);
      look.dress(scene);
      stage.setScene(scene);
      stage.show();
      List<String> args = getParameters().getRaw();
      if (!args.isEmpty()) {
        for (Theme theme : Theme.values()) {
          for (int percent : new int[] {100, 200}) {
            look.themeProperty().set(theme);
            look.textSizeProperty().set(new TextSize(percent));
            for (String place : List.of("form", "pictures", "plot", "faults", "empty")) {
              shell.show(place);
              String name = place + "-" + theme.name().toLowerCase(Locale.ROOT) + "-" + percent;
              write(scene, new File(args.get(0), name + ".png"));
            }
          }
        }
        Platform.exit();
      }
    }

    private static PlaceEntry entry(
        String key, String title, int digit, java.util.function.Supplier<javafx.scene.Node> view) {
      return new PlaceEntry(key, title, KeyCombination.keyCombination("Ctrl+" + digit), view);
    }

    private static void write(Scene scene, File file) throws IOException {
      Node primary = scene.getRoot().lookup(".primary");
      if (primary != null) {
        primary.pseudoClassStateChanged(PseudoClass.getPseudoClass("focus-visible"), true);
      }
      // Wrapped text settles its height in a second pass.
      for (int pass = 0; pass < 3; pass++) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
      }
      ImageIO.write(SwingFXUtils.fromFXImage(scene.snapshot(null), null), "png", file);
    }
  }
}
