package walebook.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What a class sews or measures together, shared out so that the results pool. */
public sealed interface Plan permits ReadingsPlan, PiecesPlan {
  /** What the class wants to find out. */
  String question();

  /** Cloths the plan speaks of; the tutor says which cloth of the room stands for each. */
  List<ClothSlot> cloths();

  Tiers tiers();

  /** The kind as pack.yaml writes it. */
  String kind();

  /** How many combinations there are to share out. */
  int cellCount();

  /** Every level that combinations differ by, such as {@code cloth=a}, in the plan's order. */
  List<String> levels();

  /**
   * The levels that a text names, such as {@code cloth=b width=3}, blanks or commas between them.
   *
   * @return in the text's order; empty when anything in it is no level of this plan
   */
  default List<String> levelsIn(String text) {
    // The longest first, so that a level that begins another is not taken for it.
    List<String> known =
        levels().stream().sorted(Comparator.comparingInt(String::length).reversed()).toList();
    List<String> found = new ArrayList<>();
    String rest = text.strip();
    while (!rest.isEmpty()) {
      String from = rest;
      String next =
          known.stream()
              .filter(
                  each ->
                      from.startsWith(each)
                          && (from.length() == each.length()
                              || " ,".indexOf(from.charAt(each.length())) >= 0))
              .findFirst()
              .orElse("");
      if (next.isEmpty()) {
        return List.of();
      }
      found.add(next);
      rest = rest.substring(next.length()).replaceFirst("^[ ,]+", "");
    }
    return List.copyOf(found);
  }

  /** A cloth of the plan: its letter and what cloth it should be. */
  record ClothSlot(String slot, String says) {}
}
