package walebook.desk.start;

import java.util.concurrent.CountDownLatch;
import javafx.application.Application;
import javafx.application.Platform;

/** Opens the window where the machine has a screen for it. */
public final class OpenWindow {
  private OpenWindow() {}

  /**
   * Opens the window and waits until it is closed.
   *
   * @param args {@code demo}, a book's path, or nothing
   * @return false when this machine can't show one; nothing has happened then
   */
  public static boolean open(String[] args) {
    if (!toolkitStarts()) {
      return false;
    }
    Application.launch(WalebookWindow.class, args);
    return true;
  }

  // Without a screen or its libraries JavaFX fails in several ways, some of them linkage errors.
  private static boolean toolkitStarts() {
    CountDownLatch started = new CountDownLatch(1);
    try {
      Platform.startup(started::countDown);
      started.await();
      return true;
    } catch (LinkageError | RuntimeException e) {
      System.getLogger(OpenWindow.class.getName()).log(System.Logger.Level.DEBUG, "no window", e);
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
