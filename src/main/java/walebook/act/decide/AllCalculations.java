package walebook.act.decide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import walebook.cloth.ClothCalculations;
import walebook.garment.GarmentCalculations;
import walebook.seam.SeamCalculations;
import walebook.tables.SharedTables;
import walebook.working.Calculation;

/** Every calculation that can be run by name, in groups; window and command line list the same. */
public final class AllCalculations {
  private AllCalculations() {}

  /**
   * The calculations by group, both in the order they are shown.
   *
   * @param tables the rows that they go by
   * @throws IllegalStateException when a calculation stands in no group, or a group names one that
   *     is not there: a mistake of the program's own
   */
  public static Map<CheckGroup, List<Calculation>> grouped(SharedTables tables) {
    Map<String, Calculation> left = new LinkedHashMap<>();
    ClothCalculations.all(tables.balanceBands()).forEach(each -> left.put(each.name(), each));
    SeamCalculations.all(tables.seamRows()).forEach(each -> left.put(each.name(), each));
    GarmentCalculations.all(tables.garment()).forEach(each -> left.put(each.name(), each));
    Map<CheckGroup, List<Calculation>> groups = new LinkedHashMap<>();
    for (CheckGroup group : CheckGroup.values()) {
      List<Calculation> members = new ArrayList<>();
      for (String name : group.names()) {
        Calculation found = left.remove(name);
        if (found == null) {
          throw new IllegalStateException("no calculation is called " + name);
        }
        members.add(found);
      }
      groups.put(group, List.copyOf(members));
    }
    if (!left.isEmpty()) {
      throw new IllegalStateException("in no group: " + left.keySet());
    }
    return groups;
  }

  /** All of them in one list, group by group. */
  public static List<Calculation> list(SharedTables tables) {
    return grouped(tables).values().stream().flatMap(List::stream).toList();
  }
}
