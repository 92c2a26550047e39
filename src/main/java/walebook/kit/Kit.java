package walebook.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.working.Message;
import walebook.working.Working;

/**
 * Everything a class needs for a lesson.
 *
 * @param title of the lesson
 * @param sparePercent how much more is taken of what is used up
 * @param lines in the order of the list to buy by
 * @param cloths the cutting plans
 * @param cuts all that is cut, whether the cloth's width is known or not
 * @param thread how the thread was worked out; null when no seam is planned
 * @param remarks from what it is reckoned first, then what could not be worked out, and why
 */
public record Kit(
    String title,
    int students,
    double sparePercent,
    List<KitLine> lines,
    List<ClothToBuy> cloths,
    List<Cut> cuts,
    @Nullable Working thread,
    List<Message> remarks) {

  /** The pieces for the class that are cut from one cloth. */
  public record Cut(String name, List<CutPiece> pieces) {
    public Cut {
      pieces = List.copyOf(pieces);
    }
  }

  public Kit {
    lines = List.copyOf(lines);
    cloths = List.copyOf(cloths);
    cuts = List.copyOf(cuts);
    remarks = List.copyOf(remarks);
  }

  /** What all lines with a price cost together. */
  public double cost() {
    return lines.stream()
        .map(KitLine::cost)
        .filter(Objects::nonNull)
        .mapToDouble(Double::doubleValue)
        .sum();
  }

  /**
   * How the thread on the list and the thread that the plan's seams take go together; null when no
   * seam is planned or no thread is listed.
   */
  public @Nullable Message threadSays() {
    double listed =
        lines.stream()
            .filter(each -> each.kind() == KitLine.Kind.THREAD && each.perStudent() != null)
            .mapToDouble(each -> Objects.requireNonNull(each.perStudent()))
            .sum();
    if (thread == null || listed <= 0) {
      return null;
    }
    String seams = Show.upTo(thread.value(), 1);
    return listed > thread.value() + 0.05
        ? Message.of("kit.thread.of-list", Show.upTo(listed, 1), seams)
        : Message.of("kit.thread.alone", seams);
  }

  /** What the amounts rest on, each in a sentence: the plan and the thread first. */
  public List<Message> says() {
    List<Message> all = new ArrayList<>(remarks);
    Message ofThread = threadSays();
    if (ofThread != null) {
      all.add(Math.min(1, all.size()), ofThread);
    }
    return List.copyOf(all);
  }

  /** How many lines have no price. */
  public int unpriced() {
    return (int) lines.stream().filter(each -> each.cost() == null).count();
  }
}
