package walebook.act.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.FaultPlace;
import walebook.record.FaultSeen;
import walebook.record.FaultWhen;
import walebook.record.Keyed;
import walebook.seam.Fault;

/**
 * Faults as one text, for drafts and the command line: {@code wavy-seam,all-along,2,sewn}, several
 * parted by a semicolon. Place and severity may be left out: all along, 2; so may the time: when
 * such a fault usually shows first.
 */
public final class FaultText {
  private static final String WANTED = "wavy-seam,all-along,2,sewn";

  private FaultText() {}

  public static String write(List<FaultSeen> faults) {
    return faults.stream()
        .map(
            each ->
                String.join(
                    ",",
                    each.fault(),
                    each.place().key(),
                    String.valueOf(each.severity()),
                    each.when().key()))
        .collect(Collectors.joining(";"));
  }

  /**
   * A fault with what was left to be assumed of it.
   *
   * @param placeSaid whether the text says where
   * @param timeSaid whether the text says when
   */
  public record Said(FaultSeen seen, boolean placeSaid, boolean timeSaid) {}

  /** A fault as it is taken where nothing more was said of it. */
  public static FaultSeen usual(Fault fault) {
    return new FaultSeen(
        fault.key(), FaultPlace.ALL_ALONG, 2, Keyed.of(FaultWhen.class, fault.firstSeen()));
  }

  /** Reads them; each must stand in the table of faults. */
  public static Answer<List<FaultSeen>> read(String text, List<Fault> known, Place place) {
    return readSaid(text, known, place).map(all -> all.stream().map(Said::seen).toList());
  }

  /** The same, with what was said of each. */
  public static Answer<List<Said>> readSaid(String text, List<Fault> known, Place place) {
    List<Said> faults = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (String one : text.split(";", -1)) {
      if (!one.isBlank()) {
        readOne(one.strip(), known, place, faults, problems);
      }
    }
    return problems.isEmpty() ? Answer.good(List.copyOf(faults)) : Answer.bad(problems);
  }

  private static void readOne(
      String one, List<Fault> known, Place place, List<Said> faults, List<Problem> problems) {
    String[] parts = one.split(",", -1);
    String key = parts[0].strip();
    Fault fault = known.stream().filter(each -> each.key().equals(key)).findFirst().orElse(null);
    if (fault == null) {
      String keys = known.stream().map(Fault::key).collect(Collectors.joining(", "));
      problems.add(Problem.refuse("choice.unknown", place, key, keys));
      return;
    }
    FaultSeen usual = usual(fault);
    FaultPlace where = null;
    FaultWhen when = null;
    int severity = usual.severity();
    for (int i = 1; i < parts.length; i++) {
      String part = parts[i].strip();
      FaultPlace asPlace = Keyed.find(FaultPlace.class, part);
      FaultWhen asTime = Keyed.find(FaultWhen.class, part);
      if (asPlace != null) {
        where = asPlace;
      } else if (asTime != null) {
        when = asTime;
      } else if (part.matches("[0-3]")) {
        severity = Integer.parseInt(part);
      } else {
        problems.add(Problem.refuse("fault.part", place, part, WANTED));
        return;
      }
    }
    FaultSeen seen =
        new FaultSeen(
            key,
            where == null ? usual.place() : where,
            severity,
            when == null ? usual.when() : when);
    faults.add(new Said(seen, where != null, when != null));
  }
}
