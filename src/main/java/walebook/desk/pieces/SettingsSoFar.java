package walebook.desk.pieces;

import java.util.List;
import java.util.stream.Collectors;
import walebook.act.piece.PieceField;
import walebook.words.Words;

/** Cloth and machine as they stand in the form, in one line. */
final class SettingsSoFar {
  private static final List<PieceField> NAMED =
      List.of(PieceField.CLOTH, PieceField.GRAIN, PieceField.STITCH);
  private static final List<PieceField> LABELLED =
      List.of(
          PieceField.LAYERS,
          PieceField.MACHINE,
          PieceField.DIAL_WIDTH,
          PieceField.DIAL_LENGTH,
          PieceField.NEEDLE_POINT,
          PieceField.NEEDLE_NM,
          PieceField.HEM_METHOD,
          PieceField.DIFFERENTIAL_FEED,
          PieceField.THREAD,
          PieceField.PRESSURE,
          PieceField.TENSION,
          PieceField.STABILISER);

  private SettingsSoFar() {}

  static String says(Words words, LogFields fields) {
    return List.of(PieceField.values()).stream()
        .filter(field -> NAMED.contains(field) || LABELLED.contains(field))
        .map(fields::at)
        .filter(each -> each.askedProperty().get() && !each.textProperty().get().isBlank())
        .map(each -> says(words, each))
        .collect(Collectors.joining(" · "));
  }

  private static String says(Words words, LogField field) {
    if (field.field() == PieceField.LAYERS) {
      String layers = field.textProperty().get().strip();
      return layers.equals("1")
          ? words.say("desk.pieces.one-layer")
          : words.say("desk.pieces.layers", layers);
    }
    Choice chosen = field.chosenProperty().get();
    String value = chosen == null ? field.textProperty().get().strip() : chosen.name();
    return NAMED.contains(field.field()) ? value : field.label() + " " + value;
  }
}
