package walebook.desk.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.FaultCauses;
import walebook.act.piece.PieceRoom;
import walebook.act.piece.SayNext;
import walebook.seam.LikelyCause;
import walebook.seam.NextTry;
import walebook.seam.Standing;
import walebook.words.Words;

/**
 * The likely causes of one fault, in words and in order.
 *
 * @param fault its key
 * @param title names the fault
 * @param likely causes to be looked into, the likeliest first
 * @param ruledOut causes that the settings speak against
 */
record CauseCard(String fault, String title, List<Line> likely, List<Line> ruledOut) {

  /**
   * One cause.
   *
   * @param says what may be behind the fault
   * @param speaks whether the piece's settings speak for it
   * @param why why it stands where it does
   * @param next the one change to sew next; null when there is none left
   * @param nextSays the change in words; empty when there is none
   */
  record Line(String says, boolean speaks, String why, @Nullable NextTry next, String nextSays) {}

  CauseCard {
    likely = List.copyOf(likely);
    ruledOut = List.copyOf(ruledOut);
  }

  static List<CauseCard> of(List<FaultCauses> faults, Words words, PieceRoom room) {
    return faults.stream().map(each -> of(each, words, room)).toList();
  }

  private static CauseCard of(FaultCauses fault, Words words, PieceRoom room) {
    List<Line> likely = new ArrayList<>();
    List<Line> ruledOut = new ArrayList<>();
    for (LikelyCause each : fault.causes()) {
      (each.standing() == Standing.RULED_OUT ? ruledOut : likely).add(line(each, words, room));
    }
    String name = fault.fault().name().replaceAll(" \\(.*", "");
    return new CauseCard(
        fault.fault().key(), words.say("desk.pieces.causes", name), likely, ruledOut);
  }

  private static Line line(LikelyCause cause, Words words, PieceRoom room) {
    List<String> why = new ArrayList<>(cause.reasons().stream().map(words::say).toList());
    cause.passedOver().forEach(each -> why.add(words.say(each)));
    NextTry next = cause.next();
    return new Line(
        cause.cause().says(),
        cause.standing() == Standing.FITS,
        why.stream().distinct().collect(Collectors.joining(" ")),
        next,
        next == null ? "" : SayNext.says(words, next, room));
  }
}
