package walebook.desk.typing;

import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.card.Shorthand;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.quantity.ReadNumber;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.Student;
import walebook.seam.StitchType;

/** What stands in a cell for what an entry holds, and back. */
final class CardText {
  private CardText() {}

  /** An entry's text as people would write it on a card. */
  static String shown(PieceField field, String text, PieceRoom room) {
    if (text.isEmpty()) {
      return text;
    }
    if (field == PieceField.CLOTH) {
      return room.cloths().stream()
          .filter(each -> each.id().toString().equals(text))
          .map(Cloth::name)
          .findFirst()
          .orElse(text);
    }
    if (field == PieceField.STITCH) {
      StitchType stitch = room.stitch(text);
      return stitch == null ? text : stitch.name();
    }
    return field.kind() == PieceField.Kind.LENGTH ? length(text, room.lengthUnit()) : text;
  }

  /** A cell's text as an entry holds it; {@code start} is what the entry began with. */
  static String typed(PieceField field, CardCell cell, String start, PieceRoom room) {
    return cell.isUntouched() ? start : Shorthand.whole(field, cell.text(), room);
  }

  /** The student that a text means: an alias or name, or the only one that begins so. */
  static @Nullable UUID student(String typed, PieceRoom room) {
    String start = typed.strip().toLowerCase(Locale.ROOT);
    if (start.isEmpty()) {
      return null;
    }
    Student only = null;
    for (Student each : room.students()) {
      if (each.alias().equalsIgnoreCase(start) || each.name().equalsIgnoreCase(start)) {
        return each.id();
      }
      if (each.name().toLowerCase(Locale.ROOT).startsWith(start)) {
        if (only != null) {
          return null;
        }
        only = each;
      }
    }
    return only == null ? null : only.id();
  }

  private static String length(String text, Unit unit) {
    Answer<Double> read = ReadNumber.length(text, unit, new Place.Whole());
    return read.isGood() ? Show.upTo(read.value() / unit.inBase(), 2) : text;
  }
}
