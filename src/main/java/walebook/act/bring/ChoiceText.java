package walebook.act.bring;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import walebook.act.bring.match.BringField;
import walebook.act.piece.PieceField;
import walebook.record.Broke;
import walebook.record.CutEdge;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.Method;
import walebook.record.NeedlePoint;
import walebook.record.PieceOutcome;
import walebook.record.Pull;
import walebook.record.SeamEnd;
import walebook.record.Step;
import walebook.record.Tier;
import walebook.words.Words;

/** The key of a choice by any of its names: our own, those on screen and paper, usual others. */
final class ChoiceText {
  private static final Map<String, String> USUAL_GRAIN =
      Map.of(
          "lengthwise",
          "wale",
          "length",
          "wale",
          "straight",
          "wale",
          "crosswise",
          "course",
          "cross",
          "course",
          "width",
          "course");
  private static final Map<String, String> USUAL_END =
      Map.of("broke", "gave", "popped", "gave", "snapped", "gave", "opened", "gave");

  private final Words words;
  private final Map<String, Map<String, String>> byField = new HashMap<>();

  ChoiceText(Words words) {
    this.words = words;
    put(PieceField.GRAIN, Grain.values(), USUAL_GRAIN);
    for (PieceField each : new PieceField[] {PieceField.END, PieceField.END_2, PieceField.END_3}) {
      put(each, SeamEnd.values(), USUAL_END);
    }
    put(PieceField.METHOD, Method.values(), Map.of());
    put(PieceField.NEEDLE_POINT, NeedlePoint.values(), Map.of("ball point", "jersey"));
    put(PieceField.PRESSURE, Step.values(), Map.of());
    put(PieceField.TENSION, Step.values(), Map.of());
    put(PieceField.BROKE, Broke.values(), Map.of());
    put(PieceField.FOLD, Fold.values(), Map.of());
    put(PieceField.PULL, Pull.values(), Map.of());
    put(PieceField.OUTCOME, PieceOutcome.values(), Map.of());
    put(BringField.READ_AT, CutEdge.values(), Map.of());
    put("student-tier", Tier.values(), Map.of());
  }

  private void put(PieceField field, Keyed[] choices, Map<String, String> usual) {
    put(field.key(), choices, usual);
  }

  private void put(String field, Keyed[] choices, Map<String, String> usual) {
    Map<String, String> keys = new HashMap<>(usual);
    for (Keyed each : choices) {
      for (String family : new String[] {"common.choice.", "sheet.grain.", "sheet.end."}) {
        if (words.has(family + each.key())) {
          keys.put(words.say(family + each.key()).toLowerCase(Locale.ROOT), each.key());
        }
      }
      keys.put(each.key(), each.key());
    }
    byField.put(field, keys);
  }

  /** The key, or the text as it stands where it is none of the choices. */
  String key(String field, String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    return byField.getOrDefault(field, Map.of()).getOrDefault(plain, text);
  }
}
