package walebook.desk.lessons;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** How long a step still has: runs, rests, starts again. It goes on while another step is shown. */
final class StepTimer {
  private final Duration whole;
  private Duration spent = Duration.ZERO;
  private @Nullable Instant since;

  StepTimer(int minutes) {
    this.whole = Duration.ofMinutes(minutes);
  }

  boolean isRunning() {
    return since != null;
  }

  /** True until it is first started, and again after a reset. */
  boolean isFresh() {
    return since == null && spent.isZero();
  }

  /** Starts it, or lets it rest. */
  void toggle(Instant now) {
    if (since == null) {
      since = now;
    } else {
      spent = spent(now);
      since = null;
    }
  }

  /** Back to the whole time, at rest. */
  void reset() {
    spent = Duration.ZERO;
    since = null;
  }

  /** What is left; negative once the time is over. */
  Duration left(Instant now) {
    return whole.minus(spent(now));
  }

  private Duration spent(Instant now) {
    Instant from = since;
    return from == null ? spent : spent.plus(Duration.between(from, now));
  }
}
