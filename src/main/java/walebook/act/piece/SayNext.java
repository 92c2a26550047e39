package walebook.act.piece;

import walebook.record.PieceCode;
import walebook.seam.Factor;
import walebook.seam.NextTry;
import walebook.seam.StitchType;
import walebook.words.Words;

/** The one change of a next attempt in words, for the window and the command line. */
public final class SayNext {
  private SayNext() {}

  /** What to try with what it is set to now and then, such as {@code longer stitch: 2 → 2.5}. */
  public static String says(Words words, NextTry next, PieceRoom room) {
    String remedy = next.remedy().says();
    if (next.to().isEmpty()) {
      return remedy;
    }
    String to = value(words, next, next.to(), room);
    return next.from().isEmpty()
        ? words.say("act.next.to", remedy, to)
        : words.say("act.next.from-to", remedy, value(words, next, next.from(), room), to);
  }

  /** How a piece is sewn again with this change from the command line. */
  public static String command(String code, NextTry next) {
    String typed = SewNext.typed(next);
    String option = "--" + SewNext.field(next.remedy().factor()).key();
    String quoted = typed.contains(" ") ? '"' + typed + '"' : typed;
    String width = next.withWidth().isEmpty() ? "" : " --dial-width " + next.withWidth();
    return "piece log --again "
        + PieceCode.spoken(code).replace(" ", "")
        + " "
        + option
        + " "
        + (typed.isEmpty() ? "…" : quoted)
        + width;
  }

  private static String value(Words words, NextTry next, String value, PieceRoom room) {
    Factor factor = next.remedy().factor();
    if (factor == Factor.STITCH) {
      StitchType stitch = room.stitch(value);
      return stitch == null ? value : stitch.name().replaceAll(" \\(.*", "");
    }
    String key = "common.choice." + value;
    boolean choice =
        factor == Factor.NEEDLE_POINT || factor == Factor.TENSION_TOP || factor == Factor.PRESSURE;
    return choice && words.has(key) ? words.say(key) : value;
  }
}
