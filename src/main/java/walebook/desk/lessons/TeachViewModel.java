package walebook.desk.lessons;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import org.jspecify.annotations.Nullable;
import walebook.lesson.Block;
import walebook.lesson.LessonPack;
import walebook.lesson.LessonText;
import walebook.words.Words;

/** A lesson taught a step at a time: where it stands, its timers, what is laid over it. */
public final class TeachViewModel {
  private static final int NO_PICTURE = -1;

  private final LessonPack pack;
  private final Words words;
  private final Clock clock;
  private final CalledOutViewModel calledOut;
  private final List<LessonText.Step> steps;
  private final Map<Integer, StepTimer> timers = new HashMap<>();
  private final ReadOnlyIntegerWrapper place = new ReadOnlyIntegerWrapper(this, "place", 0);
  private final ReadOnlyIntegerWrapper large =
      new ReadOnlyIntegerWrapper(this, "large", NO_PICTURE);
  private final BooleanProperty aside = new SimpleBooleanProperty(this, "aside");
  private final BooleanProperty working = new SimpleBooleanProperty(this, "working");
  private final ReadOnlyStringWrapper timer = new ReadOnlyStringWrapper(this, "timer", "");

  /**
   * The lesson at its first step.
   *
   * @param calledOut the calculations that numbers called out go into
   */
  public TeachViewModel(LessonPack pack, Words words, Clock clock, CalledOutViewModel calledOut) {
    this.pack = pack;
    this.words = words;
    this.clock = clock;
    this.calledOut = calledOut;
    this.steps = pack.text().steps();
    Map<String, Integer> minutes = new HashMap<>();
    pack.teaching().steps().forEach(each -> minutes.put(each.heading(), each.minutes()));
    for (int i = 0; i < steps.size(); i++) {
      Integer takes = minutes.get(steps.get(i).heading());
      if (takes != null) {
        timers.put(i, new StepTimer(takes));
      }
    }
    tick();
  }

  public LessonPack pack() {
    return pack;
  }

  public CalledOutViewModel calledOut() {
    return calledOut;
  }

  /** The step that is shown, from 0. */
  public ReadOnlyIntegerProperty placeProperty() {
    return place.getReadOnlyProperty();
  }

  public LessonText.Step step() {
    return steps.get(place.get());
  }

  /** Where the lesson stands, such as {@code step 3 of 9}. */
  public String placeSays() {
    return words.say("desk.lessons.teach.place", place.get() + 1, steps.size());
  }

  /** The step's pictures, those that stand by themselves. */
  public List<Block.Picture> pictures() {
    List<Block.Picture> found = new ArrayList<>();
    for (Block each : step().blocks()) {
      if (each instanceof Block.Picture picture) {
        found.add(picture);
      }
    }
    return found;
  }

  /** The step's text without the pictures that stand by themselves. */
  public List<Block> text() {
    return step().blocks().stream().filter(each -> !(each instanceof Block.Picture)).toList();
  }

  /** What to say to who is in trouble at the step that is shown. */
  public List<String> troubleHere() {
    return trouble(each -> each.happensAt(step().heading()));
  }

  /** What to say to who is in trouble at another step. */
  public List<String> troubleElsewhere() {
    return trouble(each -> !each.happensAt(step().heading()));
  }

  private List<String> trouble(Predicate<LessonPack.Trouble> which) {
    return pack.teaching().trouble().stream().filter(which).map(LessonPack.Trouble::says).toList();
  }

  /** Which picture fills the board, from 0; below 0 while the step does. */
  public ReadOnlyIntegerProperty largeProperty() {
    return large.getReadOnlyProperty();
  }

  /** The next picture of the step over the whole board, then the step again. */
  public void nextPicture() {
    int next = large.get() + 1;
    large.set(next < pictures().size() ? next : NO_PICTURE);
  }

  /** What the speaker says when it goes wrong, and the cautions: shown or hidden. */
  public BooleanProperty asideProperty() {
    return aside;
  }

  /** Whether the numbers called out by the room are being worked with. */
  public BooleanProperty workingProperty() {
    return working;
  }

  public void next() {
    go(place.get() + 1);
  }

  public void back() {
    go(place.get() - 1);
  }

  public void first() {
    go(0);
  }

  public void last() {
    go(steps.size() - 1);
  }

  /** Takes away what lies over the step; false when nothing did, so that the board may close. */
  public boolean uncover() {
    if (working.get()) {
      working.set(false);
    } else if (large.get() != NO_PICTURE) {
      large.set(NO_PICTURE);
    } else if (aside.get()) {
      aside.set(false);
    } else {
      return false;
    }
    return true;
  }

  /** What is left of the step's time, in figures, then in words; empty without a time. */
  public ReadOnlyStringProperty timerProperty() {
    return timer.getReadOnlyProperty();
  }

  /** Starts the step's timer or lets it rest. */
  public void toggleTimer() {
    StepTimer now = timers.get(place.get());
    if (now != null) {
      now.toggle(clock.instant());
      tick();
    }
  }

  public void resetTimer() {
    StepTimer now = timers.get(place.get());
    if (now != null) {
      now.reset();
      tick();
    }
  }

  /** Reads the clock anew; called about once a second. */
  public void tick() {
    timer.set(timerSays(timers.get(place.get())));
  }

  private String timerSays(@Nullable StepTimer now) {
    if (now == null) {
      return "";
    }
    Duration left = now.left(clock.instant());
    if (now.isFresh()) {
      return words.say("desk.lessons.teach.time", left.toMinutes());
    }
    String says = left.isNegative() || left.isZero() ? over(left.negated()) : figures(left);
    return now.isRunning() ? says : words.say("desk.lessons.teach.time-rests", says);
  }

  private String over(Duration by) {
    long minutes = by.toMinutes();
    if (minutes == 0) {
      return words.say("desk.lessons.teach.time-up");
    }
    return minutes == 1
        ? words.say("desk.lessons.teach.time-over-one")
        : words.say("desk.lessons.teach.time-over", minutes);
  }

  /** Rounded up, so that it says 0:01 until the time is up. */
  private String figures(Duration left) {
    long seconds = left.plusMillis(999).toSeconds();
    return words.say(
        "desk.lessons.teach.time-left",
        String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60));
  }

  private void go(int to) {
    int next = Math.max(0, Math.min(steps.size() - 1, to));
    if (next != place.get()) {
      large.set(NO_PICTURE);
      place.set(next);
      tick();
    }
  }
}
