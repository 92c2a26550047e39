package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;

@ExtendWith(ApplicationExtension.class)
class WorkerTest {
  private final List<String> told = new ArrayList<>();

  @Test
  void onOneThreadTheOutcomeIsThereAtOnce() {
    Task task =
        Worker.sameThread()
            .run(
                progress -> {
                  progress.at(0.5);
                  return "found";
                },
                told::add,
                fault -> told.add("failed"));
    assertThat(told).containsExactly("found");
    assertThat(task.state()).isEqualTo(Task.State.DONE);
    assertThat(task.shareProperty().get()).isEqualTo(1);
  }

  @Test
  void aFaultIsToldToWhoeverAsked() {
    Task task =
        Worker.sameThread()
            .run(
                progress -> {
                  throw new IllegalStateException("broken needle");
                },
                found -> told.add("found"),
                fault -> told.add(fault.getMessage()));
    assertThat(told).containsExactly("broken needle");
    assertThat(task.state()).isEqualTo(Task.State.FAILED);
  }

  @Test
  void cancelledWorkStopsAtItsNextReportAndTellsNothing() {
    Queue<Runnable> away = new ArrayDeque<>();
    Queue<Runnable> window = new ArrayDeque<>();
    List<Task> running = new ArrayList<>();
    running.add(
        new Worker(away::add, window::add)
            .run(
                progress -> {
                  progress.at(0.2);
                  running.get(0).cancel();
                  progress.at(0.4);
                  return told.add("went on");
                },
                found -> told.add("found"),
                fault -> told.add("failed")));
    away.remove().run();
    window.forEach(Runnable::run);
    assertThat(told).isEmpty();
    assertThat(running.get(0).state()).isEqualTo(Task.State.CANCELLED);
  }

  @Test
  void aCancelAfterTheWorkEndedButBeforeItIsToldStillHolds() {
    Queue<Runnable> window = new ArrayDeque<>();
    Task task =
        new Worker(Runnable::run, window::add)
            .run(progress -> "found", told::add, fault -> told.add("failed"));
    task.cancel();
    window.forEach(Runnable::run);
    assertThat(told).isEmpty();
  }

  @Test
  void theDeskWorkerWorksAwayFromTheWindowAndTellsOnIt() throws InterruptedException {
    CountDownLatch latch = new CountDownLatch(1);
    AtomicReference<String> worked = new AtomicReference<>("");
    AtomicReference<String> heard = new AtomicReference<>("");
    try (DeskWorker worker = new DeskWorker()) {
      worker.run(
          progress -> {
            worked.set(Thread.currentThread().getName());
            return 1;
          },
          found -> {
            heard.set(Thread.currentThread().getName());
            latch.countDown();
          },
          fault -> latch.countDown());
      assertThat(latch.await(20, TimeUnit.SECONDS)).isTrue();
    }
    assertThat(worked.get()).isEqualTo("desk-worker");
    assertThat(heard.get()).isEqualTo("JavaFX Application Thread");
  }
}
