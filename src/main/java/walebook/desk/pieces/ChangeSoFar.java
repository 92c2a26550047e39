package walebook.desk.pieces;

import java.util.ArrayList;
import java.util.List;
import walebook.act.piece.OneChange;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Keyed;
import walebook.words.Words;

/** What a second attempt changes against the first, in words, while it is being typed. */
final class ChangeSoFar {
  private ChangeSoFar() {}

  /** Marks each field that differs from the piece before, and says all changes as one sentence. */
  static String says(
      Words words, LogFields fields, PieceEntry before, PieceEntry now, PieceRoom room) {
    List<PieceField> changed = OneChange.fields(before, now, room);
    List<String> changes = new ArrayList<>();
    fields.each(
        each -> {
          boolean differs = changed.contains(each.field());
          String was = shown(each, before.at(each.field()));
          each.changed(differs ? words.say("desk.pieces.was", was) : "");
          if (differs) {
            changes.add(
                words.say(
                    "desk.pieces.change", each.label(), was, shown(each, now.at(each.field()))));
          }
        });
    return switch (changes.size()) {
      case 0 -> words.say("desk.pieces.change-none");
      case 1 -> words.say("desk.pieces.change-one", changes.get(0));
      default -> words.say("desk.pieces.change-several", String.join("; ", changes));
    };
  }

  /** The labels of fields given by their keys, joined by comma or blank. */
  static String labels(LogFields fields, String keys) {
    List<String> labels = new ArrayList<>();
    for (String key : keys.split("[ ,]+", -1)) {
      PieceField field = Keyed.find(PieceField.class, key);
      if (field != null) {
        labels.add(fields.at(field).label());
      }
    }
    return String.join(", ", labels);
  }

  private static String shown(LogField field, String key) {
    return field.choices().stream()
        .filter(each -> each.key().equals(key))
        .map(Choice::name)
        .findFirst()
        .orElse(key.isEmpty() ? "–" : key);
  }

  /** Problems of the piece as a whole, as one text. */
  static String wholeSays(Words words, LogFields fields, List<Problem> problems) {
    List<String> says = new ArrayList<>();
    for (Problem each : problems) {
      if (each.place() instanceof Place.Whole) {
        String labels = labels(fields, each.found());
        says.add(
            words.sayAtField(
                new Problem(each.code(), each.place(), labels, each.wanted(), each.weight())));
      }
    }
    return String.join(" ", says);
  }
}
