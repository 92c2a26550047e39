package walebook.compare;

import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;
import walebook.record.SetTo;

/**
 * What pieces come to that are read one after the other and not kept: it grows with the settings
 * and hands there are, not with the pieces.
 */
public final class LineTally {
  private final Map<MarkedValue, Set<UUID>> aside;
  private final Map<SetTo, SettingTally> bySetting = new LinkedHashMap<>();

  /** Pieces read in one go share the very same settings. */
  private final IdentityHashMap<SetTo, SettingTally> known = new IdentityHashMap<>();

  private int pieces;
  private int setAside;

  /**
   * Begins with none.
   *
   * @param aside pieces by the value of theirs that the tutor set aside
   */
  public LineTally(Map<MarkedValue, Set<UUID>> aside) {
    this.aside = Map.copyOf(aside);
  }

  /** One more piece. */
  public void add(ResultLine piece) {
    SettingTally tally = known.get(piece.setTo());
    if (tally == null) {
      tally = bySetting.computeIfAbsent(piece.setTo(), set -> new SettingTally(piece));
      known.put(piece.setTo(), tally);
    }
    boolean seam = isAside(MarkedValue.SEAM_STRETCH, piece) && piece.end() != null;
    boolean edge = isAside(MarkedValue.EDGE_CHANGE, piece) && piece.edgeChange() != null;
    boolean grade = isAside(MarkedValue.GRADE, piece) && piece.grade() != null;
    setAside += (seam ? 1 : 0) + (edge ? 1 : 0) + (grade ? 1 : 0);
    tally.add(piece, seam, edge, grade);
    pieces++;
  }

  private boolean isAside(MarkedValue value, ResultLine piece) {
    Set<UUID> marked = aside.get(value);
    return marked != null && !marked.isEmpty() && marked.contains(piece.pieceId());
  }

  /** Setting by setting, in the order they came. */
  public Collection<SettingTally> settings() {
    return bySetting.values();
  }

  public int pieces() {
    return pieces;
  }

  /** How many values are set aside. */
  int setAside() {
    return setAside;
  }

  /** How many pieces each student has; who has none is missing. */
  public Map<UUID, Integer> perStudent() {
    return bySetting.values().stream()
        .flatMap(each -> each.hands().entrySet().stream())
        .collect(Collectors.toMap(Map.Entry::getKey, each -> each.getValue().pieces, Integer::sum));
  }
}
