package walebook.lesson;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.IntBinaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Plans a lesson again for who is there now. What is done stays as it is. Those who stay keep what
 * they were handed, but for what they can't do any more and for the few it takes to do every
 * combination equally often again; newcomers get the share that balances the class best.
 *
 * @param <C> a combination, equal to itself alone
 */
public final class Replan<C> {
  private final Task<C> task;
  private final Map<UUID, Has<C>> has;

  private Replan(Task<C> task, List<Has<C>> soFar) {
    this.task = task;
    this.has = soFar.stream().collect(Collectors.toMap(Has::student, Function.identity()));
  }

  /**
   * What a student, here or gone, has of the plan so far.
   *
   * @param done logged, or begun so far that it stays; the control among them
   * @param open handed out and not begun
   * @param lastPlace the highest place in the student's order; 0 with none
   */
  public record Has<C>(UUID student, List<C> done, List<C> open, int lastPlace) {
    public Has {
      done = List.copyOf(done);
      open = List.copyOf(open);
    }

    boolean holds(C cell) {
      return done.contains(cell) || open.contains(cell);
    }
  }

  /** What to take back from a student. */
  public record Back<C>(UUID student, C cell) {}

  /**
   * What changes.
   *
   * @param <A> what a student is asked for
   */
  public record Change<A, C>(List<A> added, List<Back<C>> back) {
    public Change {
      added = List.copyOf(added);
      back = List.copyOf(back);
    }
  }

  /** One who is there now. */
  record Here(UUID student, int share, List<Integer> barred) {}

  /**
   * What is shared out.
   *
   * @param cells that somebody can do
   * @param control what everybody does first; null where there is none
   */
  record Task<C>(
      List<C> cells, @Nullable C control, List<Here> here, IntBinaryOperator likeness, long seed) {}

  /** Asks a student for a combination. */
  interface Ask<A, C> {
    A of(UUID student, int place, C cell);
  }

  /**
   * The change.
   *
   * @param soFar one for each student with any part of the plan, those gone too
   */
  static <A, C> Change<A, C> of(Task<C> task, List<Has<C>> soFar, Ask<A, C> ask) {
    return new Replan<>(task, soFar).change(ask);
  }

  private <A> Change<A, C> change(Ask<A, C> ask) {
    List<Has<C>> gone = new ArrayList<>(has.values());
    Set<UUID> here = task.here().stream().map(Here::student).collect(Collectors.toSet());
    gone.removeIf(each -> here.contains(each.student()));
    gone.sort((a, b) -> a.student().compareTo(b.student()));
    List<List<Integer>> blocks = blocks(gone);
    List<A> added = new ArrayList<>();
    List<Back<C>> back = new ArrayList<>();
    gone.forEach(each -> each.open().forEach(cell -> back.add(new Back<>(each.student(), cell))));
    for (int i = 0; i < task.here().size(); i++) {
      Has<C> now = of(task.here().get(i));
      List<C> wanted = wanted(blocks.get(i));
      Set<C> keeps = new HashSet<>(wanted);
      now.open().stream()
          .filter(each -> !keeps.contains(each))
          .forEach(each -> back.add(new Back<>(now.student(), each)));
      int place = now.lastPlace();
      for (C each : wanted) {
        if (!now.holds(each)) {
          added.add(ask.of(now.student(), ++place, each));
        }
      }
    }
    return new Change<>(added, back);
  }

  /** The blocks of those who are there, then of those gone. */
  private List<List<Integer>> blocks(List<Has<C>> gone) {
    List<ShareOut.Here> now = new ArrayList<>();
    for (Here each : task.here()) {
      Has<C> so = of(each);
      now.add(
          new ShareOut.Here(numbers(so.done()), numbers(so.open()), each.share(), each.barred()));
    }
    return ShareOut.again(
        task.cells().size(),
        now,
        gone.stream().map(each -> numbers(each.done())).toList(),
        task.likeness(),
        task.seed());
  }

  private Has<C> of(Here each) {
    return has.getOrDefault(each.student(), new Has<>(each.student(), List.of(), List.of(), 0));
  }

  private List<Integer> numbers(List<C> of) {
    return of.stream().map(task.cells()::indexOf).filter(each -> each >= 0).distinct().toList();
  }

  private List<C> wanted(List<Integer> block) {
    List<C> wanted = new ArrayList<>();
    C control = task.control();
    if (control != null) {
      wanted.add(control);
    }
    block.forEach(each -> wanted.add(task.cells().get(each)));
    return wanted;
  }
}
