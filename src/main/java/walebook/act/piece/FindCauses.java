package walebook.act.piece;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import walebook.record.ClothUse;
import walebook.record.FaultSeen;
import walebook.record.Machine;
import walebook.record.MachineKind;
import walebook.record.Needle;
import walebook.record.NeedlePoint;
import walebook.record.Setting;
import walebook.record.TestPiece;
import walebook.seam.Factor;
import walebook.seam.Fault;
import walebook.seam.LikelyCauses;
import walebook.seam.NeedleSize;
import walebook.seam.PieceAtHand;
import walebook.seam.StitchType;
import walebook.tables.SharedTables;

/**
 * Finds the likely causes of what was seen on a piece, from its settings, its cloth, and what the
 * attempts before it tried. Pure: the form may ask it on each keystroke.
 */
public final class FindCauses {
  private final PieceRoom room;
  private final SharedTables tables;

  public FindCauses(PieceRoom room, SharedTables tables) {
    this.room = room;
    this.tables = tables;
  }

  /**
   * The causes of every fault seen on a saved piece.
   *
   * @param chain its attempts from the first to the last, itself among them
   */
  public List<FaultCauses> of(TestPiece piece, List<TestPiece> chain) {
    return of(piece.cloth(), piece.setting(), piece.seen().faults(), chain);
  }

  /**
   * The causes of faults on a piece that may be half typed.
   *
   * @param cloth null while it is not known
   * @param setting null while it is not known
   * @param seen faults seen; one of severity 0 was looked for and not found, so it is left out
   * @param chain attempts so far
   */
  public List<FaultCauses> of(
      @Nullable ClothUse cloth,
      @Nullable Setting setting,
      List<FaultSeen> seen,
      List<TestPiece> chain) {
    List<FaultCauses> all = new ArrayList<>();
    for (FaultSeen each : seen) {
      Fault fault =
          tables.faults().stream()
              .filter(row -> row.key().equals(each.fault()))
              .findFirst()
              .orElse(null);
      if (fault != null && each.severity() > 0) {
        PieceAtHand piece = piece(cloth, setting, each, chain);
        all.add(new FaultCauses(each, fault, LikelyCauses.of(fault, piece)));
      }
    }
    return List.copyOf(all);
  }

  private PieceAtHand piece(
      @Nullable ClothUse cloth, @Nullable Setting setting, FaultSeen seen, List<TestPiece> chain) {
    Machine machine = setting == null ? null : room.machine(setting.machineId());
    Map<Factor, Set<String>> tried = new EnumMap<>(Factor.class);
    Set<String> byHand = new HashSet<>();
    for (TestPiece each : chain) {
      PieceTraits.set(each.setting())
          .forEach(
              (factor, text) -> tried.computeIfAbsent(factor, key -> new HashSet<>()).add(text));
      if (each.parent() != null) {
        byHand.add(each.parent().byHand());
      }
    }
    return new PieceAtHand(
        new PieceTraits(room, tables).of(cloth, setting, seen),
        setting == null ? Map.of() : PieceTraits.set(setting),
        lacking(setting),
        stitches(machine),
        tables.needleSizes().stream().map(NeedleSize::nm).toList(),
        machine == null ? null : machine.feedMost(),
        tried,
        byHand);
  }

  private Set<Factor> lacking(@Nullable Setting setting) {
    Set<Factor> lacking = EnumSet.noneOf(Factor.class);
    StitchType stitch = setting == null ? null : room.stitch(setting.stitchType());
    if (stitch != null && !stitch.hasWidth()) {
      lacking.add(Factor.WIDTH);
    }
    if (setting != null && setting.machineKind() == MachineKind.SEWING) {
      lacking.add(Factor.DIFFERENTIAL_FEED);
    }
    if (setting == null || stitch == null || !takesStraightPlate(setting, stitch)) {
      lacking.add(Factor.PLATE);
    }
    return lacking;
  }

  /**
   * Common practice: behind a straight-stitch plate's small hole only one needle that never swings
   * is safe; any other strikes the plate and breaks.
   */
  private static boolean takesStraightPlate(Setting setting, StitchType stitch) {
    Needle needle = setting.needle();
    return setting.machineKind() == MachineKind.SEWING
        && !stitch.hasWidth()
        && stitch.needles() == 1
        && (needle == null || needle.point() != NeedlePoint.TWIN_STRETCH);
  }

  /** What the room can sew, the piece's own machine first. */
  private List<String> stitches(@Nullable Machine own) {
    Set<String> can = new LinkedHashSet<>();
    if (own != null) {
      can.addAll(SewNext.stitches(own, room));
    }
    room.machines().forEach(each -> can.addAll(SewNext.stitches(each, room)));
    return List.copyOf(can);
  }
}
