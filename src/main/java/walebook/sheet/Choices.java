package walebook.sheet;

import org.jspecify.annotations.Nullable;
import walebook.compare.Factor;
import walebook.record.Broke;
import walebook.record.CutEdge;
import walebook.record.FaultPlace;
import walebook.record.FaultWhen;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.NeedlePoint;
import walebook.record.PieceOutcome;
import walebook.record.Pull;
import walebook.record.SeamEnd;
import walebook.record.Step;
import walebook.words.Words;

/** The record's choices in plain words; null stays null. */
record Choices(Words words) {
  private static final String COMMON = "common.choice.";

  @Nullable String grain(@Nullable Grain choice) {
    return word("sheet.grain.", choice);
  }

  @Nullable String method(@Nullable Method choice) {
    return word(COMMON, choice);
  }

  @Nullable String machine(@Nullable MachineKind choice) {
    return word(COMMON, choice);
  }

  @Nullable String point(@Nullable NeedlePoint choice) {
    return word(COMMON, choice);
  }

  @Nullable String step(@Nullable Step choice) {
    return word(COMMON, choice);
  }

  @Nullable String end(@Nullable SeamEnd choice) {
    return word("sheet.end.", choice);
  }

  @Nullable String broke(@Nullable Broke choice) {
    return word(COMMON, choice);
  }

  @Nullable String outcome(@Nullable PieceOutcome choice) {
    return word(COMMON, choice);
  }

  String place(FaultPlace choice) {
    return words.say(COMMON + choice.key());
  }

  String when(FaultWhen choice) {
    return words.say(COMMON + choice.key());
  }

  @Nullable String fold(@Nullable Fold choice) {
    return word(COMMON, choice);
  }

  @Nullable String edge(@Nullable CutEdge choice) {
    return word(COMMON, choice);
  }

  @Nullable String pull(@Nullable Pull choice) {
    return word(COMMON, choice);
  }

  String factor(Factor choice) {
    return words.say("sheet.factor." + choice.key());
  }

  /** Yes, no, or null where nobody has looked. */
  @Nullable String yes(@Nullable Boolean choice) {
    return choice == null ? null : words.say(choice ? "sheet.yes" : "sheet.no");
  }

  private @Nullable String word(String of, @Nullable Keyed choice) {
    return choice == null ? null : words.say(of + choice.key());
  }
}
