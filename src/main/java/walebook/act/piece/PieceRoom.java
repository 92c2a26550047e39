package walebook.act.piece;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.compare.ClothStretch;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.ClothUse;
import walebook.record.Grain;
import walebook.record.Machine;
import walebook.record.Student;
import walebook.seam.Fault;
import walebook.seam.StitchType;

/**
 * What the log form has to know of the room: read once from the book, then asked on each keystroke.
 *
 * @param stretches what is known of each cloth's stretch, by cloth and grain
 * @param lengthUnit what a length without a unit means
 */
public record PieceRoom(
    List<Cloth> cloths,
    List<Machine> machines,
    List<Student> students,
    List<StitchType> stitches,
    List<Fault> faults,
    Map<UUID, Map<Grain, ClothStretch>> stretches,
    Unit lengthUnit) {
  public PieceRoom {
    cloths = List.copyOf(cloths);
    machines = List.copyOf(machines);
    students = List.copyOf(students);
    stitches = List.copyOf(stitches);
    faults = List.copyOf(faults);
    stretches = Map.copyOf(stretches);
  }

  public @Nullable StitchType stitch(String key) {
    return stitches.stream().filter(each -> each.key().equals(key)).findFirst().orElse(null);
  }

  public @Nullable Machine machine(@Nullable UUID id) {
    return machines.stream().filter(each -> each.id().equals(id)).findFirst().orElse(null);
  }

  public @Nullable Cloth cloth(@Nullable UUID id) {
    return cloths.stream().filter(each -> each.id().equals(id)).findFirst().orElse(null);
  }

  public @Nullable Student student(@Nullable UUID id) {
    return students.stream().filter(each -> each.id().equals(id)).findFirst().orElse(null);
  }

  /** What is known of a cloth's stretch along a grain, or null. */
  public @Nullable ClothStretch stretch(ClothUse use) {
    return stretch(use.clothId(), use.grain());
  }

  public @Nullable ClothStretch stretch(UUID clothId, Grain grain) {
    return stretches.getOrDefault(clothId, Map.of()).get(grain);
  }
}
