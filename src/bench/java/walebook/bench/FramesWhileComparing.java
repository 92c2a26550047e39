package walebook.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import java.util.stream.LongStream;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Pane;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import walebook.book.open.SqliteFiles;
import walebook.compare.Outcome;
import walebook.desk.shell.Shell;
import walebook.desk.start.KeptSettings;
import walebook.desk.start.WalebookWindow;
import walebook.words.Words;

/**
 * The gaps between frames of the real window while a class is compared in a book of a million
 * pieces, beside those of the same window at rest, by turns in one run. No gap should be over 50
 * ms; what the window at rest misses is the machine's, not the comparison's. Where other programs
 * share the machine, the frames' own work tells more than the gaps.
 *
 * <p>With a book's file behind it that book is opened and kept; without, one is made. Without a
 * screen it runs on the headless platform of the window tests.
 */
public final class FramesWhileComparing {
  private static final int ROUNDS = 8;
  private static final long LONGEST_MS = 50;
  private static final long PATIENCE_NS = 120_000_000_000L;
  private static final int FRAMES_AFTER = 45;
  private static final Words WORDS = Words.english();

  private final Frames frames;

  private FramesWhileComparing(Frames frames) {
    this.frames = frames;
  }

  public static void main(String[] args) throws Exception {
    if (System.getenv("DISPLAY") == null) {
      System.setProperty("glass.platform", "Monocle");
      System.setProperty("monocle.platform", "Headless");
      System.setProperty("prism.order", "sw");
    }
    Path folder = Files.createTempDirectory("walebook-bench");
    System.setProperty("user.home", folder.toString());
    KeptSettings settings = KeptSettings.ofUser();
    settings.keep("class.lesson", "all");
    settings.keep("class.factors", "stitch dial-width ");
    Path file = args.length == 0 ? folder.resolve("million.walebook") : Path.of(args[0]);
    if (!Files.exists(file)) {
      new MillionPieces().make(file, new SqliteFiles());
    }
    CompletableFuture<Void> driven = CompletableFuture.runAsync(FramesWhileComparing::drive);
    Application.launch(WalebookWindow.class, file.toString());
    driven.get();
    Folders.delete(folder);
  }

  private static void drive() {
    try {
      Shell shell = (Shell) waitFor(root -> root instanceof Shell);
      Frames frames = onWindow(Frames::new);
      new FramesWhileComparing(frames).run(shell);
    } catch (Exception e) {
      throw new IllegalStateException(e);
    } finally {
      Platform.exit();
    }
  }

  private void run(Shell shell) throws Exception {
    rest(4000);
    print("at rest, before", frames.take());
    onWindow(
        () -> {
          shell.show("class");
          return shell;
        });
    rest(4000);
    print("opening the place", frames.take());
    part("desk.class.comparison");
    Pane view = (Pane) waitFor(each -> each.getClass().getSimpleName().equals("FairView"));
    settled(view, null);
    print("the first comparison", frames.take());
    List<Frames.Frame> busy = new ArrayList<>();
    List<Frames.Frame> idle = new ArrayList<>();
    int asked = 0;
    for (int round = 0; round < ROUNDS; round++) {
      for (Outcome outcome : Outcome.values()) {
        long begin = System.nanoTime();
        if (compare(view, outcome)) {
          asked++;
        }
        busy.addAll(frames.take());
        rest((System.nanoTime() - begin) / 1_000_000);
        idle.addAll(frames.take());
      }
    }
    print("comparisons: " + asked, busy);
    print("at rest between them", idle);
    for (String part :
        List.of("overview", "control", "alike", "odd", "terms", "growth", "progress")) {
      part("desk.class." + part);
      rest(3000);
      print("part " + part, frames.take());
    }
  }

  /** Chooses an outcome and waits until it is shown; false when it was chosen before. */
  private boolean compare(Pane view, Outcome outcome) throws Exception {
    Node before = onWindow(() -> first(view));
    boolean other =
        onWindow(
            () -> {
              ComboBox<Outcome> box = outcomes();
              boolean now = box.getValue() != outcome;
              box.setValue(outcome);
              return now;
            });
    if (other) {
      settled(view, before);
    }
    return other;
  }

  /** Waits for what was found, and for the frames in which it is laid out and drawn. */
  private void settled(Pane view, @Nullable Node before) throws Exception {
    long until = System.nanoTime() + PATIENCE_NS;
    while (onWindow(() -> first(view)) == before || onWindow(() -> first(view)) == null) {
      if (System.nanoTime() > until) {
        throw new IllegalStateException("nothing was found");
      }
      Thread.sleep(2);
    }
    frames.await(FRAMES_AFTER);
  }

  private static @Nullable Node first(Pane view) {
    return view.getChildren().isEmpty() ? null : view.getChildren().get(0);
  }

  private static void part(String key) throws Exception {
    ToggleButton button =
        (ToggleButton)
            waitFor(
                each ->
                    each instanceof ToggleButton toggle && WORDS.say(key).equals(toggle.getText()));
    onWindow(
        () -> {
          button.fire();
          return button;
        });
  }

  @SuppressWarnings("unchecked")
  private static ComboBox<Outcome> outcomes() {
    Node found =
        find(
            each ->
                each instanceof ComboBox<?> box
                    && !box.getItems().isEmpty()
                    && box.getItems().get(0) instanceof Outcome);
    if (found == null) {
      throw new IllegalStateException("no choice of outcomes");
    }
    return (ComboBox<Outcome>) found;
  }

  private static Node waitFor(Predicate<Node> which) throws Exception {
    long until = System.nanoTime() + PATIENCE_NS;
    while (System.nanoTime() < until) {
      Node found = onWindow(() -> find(which));
      if (found != null) {
        return found;
      }
      Thread.sleep(50);
    }
    throw new IllegalStateException("the window does not show what is looked for");
  }

  private static @Nullable Node find(Predicate<Node> which) {
    for (Window each : Window.getWindows()) {
      Node found = each.getScene() == null ? null : find(each.getScene().getRoot(), which);
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  private static @Nullable Node find(Node from, Predicate<Node> which) {
    if (which.test(from)) {
      return from;
    }
    if (from instanceof Parent parent) {
      for (Node each : parent.getChildrenUnmodifiable()) {
        Node found = find(each, which);
        if (found != null) {
          return found;
        }
      }
    }
    return null;
  }

  private static void rest(long ms) throws InterruptedException {
    Thread.sleep(Math.max(200, ms));
  }

  /** Runs on the window's thread and waits; before the toolkit is there it tries again. */
  private static <T extends @Nullable Object> T onWindow(Callable<T> work) throws Exception {
    CompletableFuture<T> done = new CompletableFuture<>();
    Runnable run =
        () -> {
          try {
            done.complete(work.call());
          } catch (Exception e) {
            done.completeExceptionally(e);
          }
        };
    while (true) {
      try {
        Platform.runLater(run);
        return done.get();
      } catch (IllegalStateException e) {
        Thread.sleep(50);
      }
    }
  }

  private static void print(String what, List<Frames.Frame> frames) {
    System.out.println(
        String.format(
            Locale.ROOT,
            "frames, %s: %d; gaps %s; own work %s",
            what,
            frames.size(),
            told(frames, Frames.Frame::gap),
            told(frames, Frames.Frame::work)));
  }

  private static String told(List<Frames.Frame> frames, ToLongFunction<Frames.Frame> number) {
    long[] sorted = frames.stream().mapToLong(number).sorted().toArray();
    if (sorted.length == 0) {
      return "none";
    }
    return String.format(
        Locale.ROOT,
        "median %.1f, 99th percentile %.1f, longest %.1f ms, over %d ms: %d",
        sorted[sorted.length / 2] / 1e6,
        sorted[(int) (0.99 * (sorted.length - 1))] / 1e6,
        sorted[sorted.length - 1] / 1e6,
        LONGEST_MS,
        LongStream.of(sorted).filter(each -> each > LONGEST_MS * 1_000_000).count());
  }
}
