package walebook.desk.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.record.Broke;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.Method;
import walebook.record.NeedlePoint;
import walebook.record.PieceOutcome;
import walebook.record.Pull;
import walebook.record.SeamEnd;
import walebook.record.Step;
import walebook.seam.StitchType;
import walebook.words.Words;

/** What each field of the log form can be in a room. */
final class FieldChoices {
  private final Words words;
  private final PieceRoom room;
  private final boolean namesHidden;

  FieldChoices(Words words, PieceRoom room, boolean namesHidden) {
    this.words = words;
    this.room = room;
    this.namesHidden = namesHidden;
  }

  /** The choices of a field; empty for one that is typed. */
  List<Choice> of(PieceField field) {
    return switch (field) {
      case CLOTH ->
          room.cloths().stream().map(c -> new Choice(c.id().toString(), c.name())).toList();
      case GRAIN -> keyed(Grain.values());
      case METHOD -> keyed(Method.values());
      case MACHINE ->
          optional(
              room.machines().stream()
                  .map(m -> new Choice(String.valueOf(m.number()), m.label()))
                  .toList());
      case STITCH -> room.stitches().stream().map(s -> new Choice(s.key(), stitchName(s))).toList();
      case NEEDLE_POINT -> optional(keyed(NeedlePoint.values()));
      case PRESSURE, TENSION -> optional(keyed(Step.values()));
      case BROKE -> optional(keyed(Broke.values()));
      case FOLD -> optional(keyed(Fold.values()));
      case PULL -> optional(keyed(Pull.values()));
      case MEASURED_BY ->
          optional(
              room.students().stream()
                  .map(s -> new Choice(s.id().toString(), namesHidden ? s.alias() : s.name()))
                  .toList());
      default -> everywhere(words, field);
    };
  }

  /** The choices that are the same in every room; empty for all other fields. */
  static List<Choice> everywhere(Words words, PieceField field) {
    return switch (field) {
      case END, END_2, END_3 -> keyed(words, SeamEnd.values());
      case GRADE ->
          Stream.of("1", "2", "3", "4", "5")
              .map(grade -> new Choice(grade, words.say("desk.pieces.grade." + grade)))
              .toList();
      case OUTCOME -> keyed(words, PieceOutcome.values());
      default -> List.of();
    };
  }

  /** A stitch with its number, such as {@code zigzag · 304}. */
  static String stitchName(StitchType stitch) {
    return stitch.number() == null ? stitch.name() : stitch.name() + " · " + stitch.number();
  }

  private List<Choice> keyed(Keyed[] values) {
    return keyed(words, values);
  }

  /** The constants of a kind with their words. */
  static List<Choice> keyed(Words words, Keyed[] values) {
    return Stream.of(values)
        .map(each -> new Choice(each.key(), words.say("common.choice." + each.key())))
        .toList();
  }

  private List<Choice> optional(List<Choice> choices) {
    List<Choice> all = new ArrayList<>();
    all.add(new Choice("", words.say("desk.pieces.not-noted")));
    all.addAll(choices);
    return all;
  }
}
