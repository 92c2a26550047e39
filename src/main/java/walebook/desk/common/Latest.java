package walebook.desk.common;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Reading of which only the newest answer counts: with several threads an older one may come later,
 * and would stand for what was asked since. Called on the window's thread.
 */
public final class Latest {
  private final Session session;
  private @Nullable Task reading;

  public Latest(Session session) {
    this.session = session;
  }

  /** Reads away from the window; what was asked for before is told no more. */
  public <T> void read(Background.Work<T> work, Consumer<T> done) {
    drop();
    reading = session.run(work, done);
  }

  /** Lets go of what is being read. */
  public void drop() {
    Task was = reading;
    reading = null;
    if (was != null) {
      was.cancel();
    }
  }
}
