package walebook.act.print;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceField;
import walebook.paper.CardField;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Needle;
import walebook.record.PieceAsked;
import walebook.record.PlannedPiece;
import walebook.seam.StitchType;
import walebook.words.Words;

/** What stands in each field of a record card: the form's label, the plan's setting, boxes. */
final class CardWording {
  /** Shares of a card's width, in twelfths, by what has to be written there. */
  private static final Map<PieceField, Integer> SHARES = new EnumMap<>(PieceField.class);

  static {
    shares(12, PieceField.BROKE);
    shares(9, PieceField.REMARK);
    shares(8, PieceField.FAULTS, PieceField.OUTCOME);
    shares(7, PieceField.PULL);
    shares(
        6,
        PieceField.CLOTH,
        PieceField.STITCH,
        PieceField.HEM_METHOD,
        PieceField.DIFFERENTIAL_FEED,
        PieceField.THREAD,
        PieceField.PRESSURE,
        PieceField.TENSION,
        PieceField.STABILISER,
        PieceField.SEWN_WIDTH,
        PieceField.SEWN_LENGTH,
        PieceField.END,
        PieceField.END_LENGTH,
        PieceField.END_2,
        PieceField.END_LENGTH_2,
        PieceField.END_3,
        PieceField.END_LENGTH_3);
    shares(5, PieceField.FOLD);
    shares(
        4,
        PieceField.GRAIN,
        PieceField.RELEASED,
        PieceField.NEED,
        PieceField.REST,
        PieceField.GRADE);
    shares(2, PieceField.LAYERS, PieceField.LOAD, PieceField.HOLD, PieceField.SEWN_ON);
  }

  private final Words words;
  private final PlannedPiece planned;
  private final String cloth;
  private final PieceWording wording;

  CardWording(Words words, PlannedPiece planned, String cloth, PieceWording wording) {
    this.words = words;
    this.planned = planned;
    this.cloth = cloth;
    this.wording = wording;
  }

  private static void shares(int share, PieceField... fields) {
    for (PieceField field : fields) {
      SHARES.put(field, share);
    }
  }

  /** The form's label. */
  String label(PieceField field) {
    return words.say("desk.pieces.field." + field.key());
  }

  CardField field(PieceField field, boolean first) {
    boolean group =
        first
            || field == PieceField.METHOD
            || field == PieceField.GAUGE
            || field == PieceField.GRADE;
    return new CardField(
        label(field),
        filled(field),
        boxes(field),
        field.kind() == PieceField.Kind.LENGTH ? Unit.MM.sign() : "",
        SHARES.getOrDefault(field, 3),
        group);
  }

  /** What the plan asks for; empty for what is written by hand. */
  private String filled(PieceField field) {
    PieceAsked asked = planned.asked();
    Needle needle = asked.needle();
    StitchType type = wording.type(asked.stitchType());
    return switch (field) {
      case CLOTH -> cloth;
      case GRAIN -> wording.grainSays(asked.grain());
      case LAYERS -> String.valueOf(asked.layers());
      case METHOD -> words.say("common.choice." + asked.method().key());
      case STITCH -> type == null ? asked.stitchType() : type.name();
      case DIAL_WIDTH -> number(asked.dialWidth());
      case DIAL_LENGTH -> number(asked.dialLength());
      case NEEDLE_POINT -> needle == null ? "" : words.say("common.choice." + needle.point().key());
      case NEEDLE_NM -> needle == null ? "" : String.valueOf(needle.nm());
      case HEM_METHOD -> asked.hemMethod();
      case STABILISER -> asked.stabiliser();
      case NEED -> number(asked.needPercent());
      default -> "";
    };
  }

  private List<String> boxes(PieceField field) {
    return switch (field) {
      case PRESSURE, TENSION ->
          say("common.choice.lower", "common.choice.normal", "common.choice.higher");
      case END, END_2, END_3 -> say("sheet.end.gave", "sheet.end.held");
      case BROKE ->
          say(
              "common.choice.needle-thread",
              "act.print.card.under",
              "common.choice.cloth",
              "act.print.card.opened");
      case FOLD -> say("common.choice.folded", "common.choice.single");
      case PULL -> say("act.print.card.comfortable", "act.print.card.firm", "act.print.card.load");
      case GRADE -> List.of("1", "2", "3", "4", "5");
      case OUTCOME -> say("common.choice.keep", "common.choice.change", "common.choice.spoiled");
      default -> List.of();
    };
  }

  private List<String> say(String... keys) {
    return java.util.Arrays.stream(keys).map(words::say).toList();
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : Show.upTo(value, 2);
  }
}
