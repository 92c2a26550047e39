package walebook.desk.pieces;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.Asked;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.record.Keyed;
import walebook.record.Machine;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.Pull;
import walebook.record.SeamEnd;
import walebook.seam.StitchType;

/** Which fields are asked for by what stands in the others. */
final class AskedNow {
  private AskedNow() {}

  static Set<PieceField> of(LogFields fields, PieceRoom room, int readings, boolean again) {
    Method method = Keyed.find(Method.class, text(fields, PieceField.METHOD));
    StitchType stitch = room.stitch(text(fields, PieceField.STITCH));
    return Asked.of(
        method == null ? Method.SEAM : method,
        kind(text(fields, PieceField.MACHINE), stitch, room),
        stitch,
        anyGave(fields, readings),
        Keyed.find(Pull.class, text(fields, PieceField.PULL)),
        readings,
        again);
  }

  private static MachineKind kind(String number, @Nullable StitchType stitch, PieceRoom room) {
    for (Machine each : room.machines()) {
      if (String.valueOf(each.number()).equals(number)) {
        return each.kind();
      }
    }
    MachineKind usual =
        stitch == null ? null : Keyed.find(MachineKind.class, stitch.machines().get(0));
    return usual == null ? MachineKind.SEWING : usual;
  }

  private static @Nullable SeamEnd anyGave(LogFields fields, int readings) {
    PieceField[] ends = {PieceField.END, PieceField.END_2, PieceField.END_3};
    for (int i = 0; i < Math.min(readings, ends.length); i++) {
      if (text(fields, ends[i]).equals(SeamEnd.GAVE.key())) {
        return SeamEnd.GAVE;
      }
    }
    return Keyed.find(SeamEnd.class, text(fields, PieceField.END));
  }

  private static String text(LogFields fields, PieceField field) {
    return fields.at(field).textProperty().get().strip();
  }
}
