package walebook.desk.start;

import javafx.scene.Scene;
import javafx.stage.Stage;
import org.testfx.util.WaitForAsyncUtils;
import walebook.desk.common.Session;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.desk.shell.FindField;
import walebook.desk.shell.FindViewModel;
import walebook.desk.shell.Shell;
import walebook.quantity.Unit;

/** All places over one book in a window, each leading to the others as it does for a person. */
final class OpenedWindow {
  final Shell shell;
  final Scene scene;
  private final Places places;

  OpenedWindow(Stage stage, Session session) {
    this(stage, session, TextSize.USUAL);
  }

  OpenedWindow(Stage stage, Session session, TextSize size) {
    Look look = new Look(Theme.LIGHT, size);
    places = new Places(session, look, Unit.MM, copy -> {});
    shell = new Shell(session.words(), look, places.entries());
    places.beside(shell);
    shell.find(new FindField(session.words(), new FindViewModel(session)));
    session
        .wishProperty()
        .addListener(
            (from, old, now) -> {
              if (now != null) {
                shell.show(now.place());
              }
            });
    scene = new Scene(shell, 1280, 800);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  /** Keeps what is being typed, as when the window is shut. */
  void close() {
    WaitForAsyncUtils.waitForAsyncFx(5000, places::rest);
  }
}
