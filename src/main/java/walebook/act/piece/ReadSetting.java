package walebook.act.piece;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.record.Dial;
import walebook.record.Keyed;
import walebook.record.Machine;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.Needle;
import walebook.record.NeedlePoint;
import walebook.record.Setting;
import walebook.record.Step;
import walebook.record.StepDial;
import walebook.seam.StitchType;

/** Reads how the machine was set; sewn width and length follow from the machine's card. */
final class ReadSetting {
  private static final double USUAL_WIDTH = 9;
  private static final double USUAL_LENGTH = 6;
  private static final double USUAL_FEED = 2.3;

  private final FieldReader read;
  private final PieceRoom room;

  ReadSetting(FieldReader read, PieceRoom room) {
    this.read = read;
    this.room = room;
  }

  @Nullable Setting setting() {
    StitchType stitch = stitch();
    Machine machine = machine();
    Method method = read.choice(PieceField.METHOD, Method.class);
    Double width = read.number(PieceField.DIAL_WIDTH, 0, USUAL_WIDTH);
    Double length = read.number(PieceField.DIAL_LENGTH, 0.1, USUAL_LENGTH);
    Double sewnWidth = read.number(PieceField.SEWN_WIDTH, 0, USUAL_WIDTH);
    Double sewnLength = read.number(PieceField.SEWN_LENGTH, 0.1, USUAL_LENGTH);
    Step pressure = read.choice(PieceField.PRESSURE, Step.class);
    Step tension = read.choice(PieceField.TENSION, Step.class);
    Double feed = read.number(PieceField.DIFFERENTIAL_FEED, 0.1, USUAL_FEED);
    Needle needle = needle();
    if (stitch == null) {
      return null;
    }
    if (machine != null
        && !machine.stitches().isEmpty()
        && !machine.stitches().contains(stitch.key())) {
      read.ask(PieceField.STITCH, "stitch.not-on-machine", machine.label());
    }
    Double ownWidth = stitch.hasWidth() ? width : null;
    return new Setting(
        method == null ? Method.SEAM : method,
        machine == null ? null : machine.id(),
        kind(machine, stitch),
        stitch.key(),
        stitch.name(),
        ownWidth,
        length,
        stitch.hasWidth() ? sewn(sewnWidth, machine, Dial.WIDTH, ownWidth) : null,
        sewn(sewnLength, machine, Dial.LENGTH, length),
        needle,
        read.text(PieceField.THREAD),
        pressure,
        dial(machine == null ? null : machine.pressure(), pressure),
        tension,
        dial(machine == null ? null : machine.tension(), tension),
        feed,
        read.text(PieceField.STABILISER),
        read.text(PieceField.HEM_METHOD));
  }

  private static MachineKind kind(@Nullable Machine machine, StitchType stitch) {
    if (machine != null) {
      return machine.kind();
    }
    MachineKind usual = Keyed.find(MachineKind.class, stitch.machines().get(0));
    return usual == null ? MachineKind.SEWING : usual;
  }

  /** What was measured on the piece, else what the card makes of the dial, else the dial itself. */
  private static @Nullable Double sewn(
      @Nullable Double measured, @Nullable Machine machine, Dial what, @Nullable Double dial) {
    if (measured != null || dial == null) {
      return measured;
    }
    Double card = machine == null ? null : machine.sewn(what, dial);
    return card == null ? dial : card;
  }

  private static String dial(@Nullable StepDial dial, @Nullable Step step) {
    return dial == null || step == null ? "" : dial.at(step);
  }

  private @Nullable StitchType stitch() {
    Map<String, StitchType> byName = new LinkedHashMap<>();
    for (StitchType each : room.stitches()) {
      byName.put(each.key(), each);
      byName.putIfAbsent(each.name(), each);
    }
    if (read.text(PieceField.STITCH).isEmpty()) {
      read.refuse(PieceField.STITCH, "field.needed", "");
      return null;
    }
    return read.named(PieceField.STITCH, byName);
  }

  private @Nullable Machine machine() {
    Map<String, Machine> byName = new LinkedHashMap<>();
    for (Machine each : room.machines()) {
      byName.put(String.valueOf(each.number()), each);
      byName.put(each.id().toString(), each);
    }
    return read.named(PieceField.MACHINE, byName);
  }

  private @Nullable Needle needle() {
    NeedlePoint point = read.choice(PieceField.NEEDLE_POINT, NeedlePoint.class);
    Integer nm = read.whole(PieceField.NEEDLE_NM, 50, 200);
    if (point != null && nm == null && read.text(PieceField.NEEDLE_NM).isEmpty()) {
      read.refuse(PieceField.NEEDLE_NM, "field.needed", "75");
    } else if (point == null && nm != null && read.text(PieceField.NEEDLE_POINT).isEmpty()) {
      read.refuse(PieceField.NEEDLE_POINT, "field.needed", "jersey");
    }
    return point == null || nm == null ? null : new Needle(point, nm);
  }
}
