package walebook.act.lesson;

import java.util.List;

/**
 * What is typed to work out a kit.
 *
 * @param students how many; empty for those of the class
 * @param spare more of what is used up, per cent
 * @param margin between two pieces on the cloth
 * @param widths usable widths, such as {@code a=150 cm}
 * @param washes what washing does, along and across, such as {@code a=-5/-3}
 * @param prices for one unit of the list, such as {@code a=8.50}; {@code a=} for none
 */
public record KitTyped(
    String students,
    String spare,
    String margin,
    List<String> widths,
    List<String> washes,
    List<String> prices) {
  /** More of what is used up, per cent; common practice. */
  public static final String USUAL_SPARE = "10";

  /** The key of thread that the plan's seams take and no material names. */
  public static final String THREAD = "thread";

  public KitTyped {
    widths = List.copyOf(widths);
    washes = List.copyOf(washes);
    prices = List.copyOf(prices);
  }

  /** What is meant where nothing is typed: a tenth to spare, pieces edge to edge. */
  public static KitTyped usual(int students) {
    return new KitTyped(String.valueOf(students), USUAL_SPARE, "", List.of(), List.of(), List.of());
  }
}
