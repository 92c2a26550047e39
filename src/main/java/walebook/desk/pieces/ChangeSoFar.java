package walebook.desk.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.record.Keyed;
import walebook.words.Words;

/** What a second attempt changes against the first, in words, while it is being typed. */
final class ChangeSoFar {
  private ChangeSoFar() {}

  static String says(Words words, LogFields fields, PieceEntry before) {
    List<String> changes = new ArrayList<>();
    fields.each(
        each -> {
          PieceField field = each.field();
          boolean follows = field == PieceField.SEWN_LENGTH || field == PieceField.SEWN_WIDTH;
          String now = each.textProperty().get().strip();
          if (field.isSetting()
              && !follows
              && each.askedProperty().get()
              && !plain(now).equals(plain(before.at(field)))) {
            changes.add(
                words.say(
                    "desk.pieces.change",
                    each.label(),
                    shown(each, before.at(field)),
                    shown(each, now)));
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

  private static String plain(String typed) {
    String text = typed.replace(',', '.').toLowerCase(Locale.ROOT);
    return text.matches("[0-9]+\\.[0-9]*") ? text.replaceAll("\\.?0*$", "") : text;
  }
}
