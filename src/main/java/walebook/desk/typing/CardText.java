package walebook.desk.typing;

import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
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
import walebook.words.Words;

/** What stands in a cell for what an entry holds, and back. */
final class CardText {
  private final PieceRoom room;
  private final CardChoices choices;

  CardText(Words words, PieceRoom room) {
    this.room = room;
    this.choices = new CardChoices(words, room);
  }

  CardChoices choices() {
    return choices;
  }

  /** An entry's text as people would write it on a card. */
  String shown(PieceField field, String text) {
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
    return field.kind() == PieceField.Kind.LENGTH
        ? length(text, room.lengthUnit())
        : choices.says(field, text);
  }

  /** A cell's text as an entry holds it; {@code start} is what the entry began with. */
  String typed(PieceField field, CardCell cell, String start) {
    return cell.isUntouched() ? start : choices.keys(field, cell.text());
  }

  /** A typed text with each beginning of one single choice made whole; any other as it is. */
  String whole(PieceField field, String typed) {
    return choices.says(field, choices.keys(field, typed));
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
