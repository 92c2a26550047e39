package walebook.compare;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;
import walebook.statistics.Counted;
import walebook.statistics.FiveNumbers;

/** One combination of levels of which the single pieces were not kept. */
public record TalliedRow(
    List<String> levels,
    int pieces,
    int students,
    int gave,
    int held,
    int withFault,
    @Nullable FiveNumbers stretchOfGave,
    @Nullable FiveNumbers shareOfGave,
    @Nullable FiveNumbers edgeChange,
    @Nullable FiveNumbers grade)
    implements SettingFound {
  public TalliedRow {
    levels = List.copyOf(levels);
  }

  static TalliedRow of(
      List<String> levels,
      Collection<SettingTally> tallies,
      Map<UUID, Map<Grain, ClothStretch>> stretches) {
    int pieces = 0;
    int gave = 0;
    int held = 0;
    int withFault = 0;
    Set<UUID> students = new HashSet<>();
    Counted stretch = new Counted();
    Counted share = new Counted();
    Counted edge = new Counted();
    Counted grade = new Counted();
    for (SettingTally each : tallies) {
      pieces += each.hands().values().stream().mapToInt(hand -> hand.pieces).sum();
      gave += each.kept().endsGave;
      held += each.kept().endsHeld;
      withFault += each.withFault();
      students.addAll(each.hands().keySet());
      stretch.addAll(each.kept().gave);
      ClothStretch cloth = CompareBySetting.stretch(stretches, each.first());
      if (cloth != null && cloth.percent() > 0) {
        share.addAll(each.kept().gave.map(value -> 100 * value / cloth.percent()));
      }
      edge.addAll(each.kept().edge);
      grade.addAll(each.kept().grade);
    }
    return new TalliedRow(
        levels,
        pieces,
        students.size(),
        gave,
        held,
        withFault,
        spread(stretch),
        spread(share),
        spread(edge),
        spread(grade));
  }

  private static @Nullable FiveNumbers spread(Counted values) {
    return values.isEmpty() ? null : FiveNumbers.of(values);
  }
}
