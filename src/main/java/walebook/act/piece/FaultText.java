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
 * parted by a semicolon. Place, severity and time may be left out: all along, 2, off the machine.
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

  /** Reads them; each must stand in the table of faults. */
  public static Answer<List<FaultSeen>> read(String text, List<Fault> known, Place place) {
    List<FaultSeen> faults = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (String one : text.split(";", -1)) {
      if (!one.isBlank()) {
        readOne(one.strip(), known, place, faults, problems);
      }
    }
    return problems.isEmpty() ? Answer.good(List.copyOf(faults)) : Answer.bad(problems);
  }

  private static void readOne(
      String one, List<Fault> known, Place place, List<FaultSeen> faults, List<Problem> problems) {
    String[] parts = one.split(",", -1);
    String key = parts[0].strip();
    if (known.stream().noneMatch(each -> each.key().equals(key))) {
      String keys = known.stream().map(Fault::key).collect(Collectors.joining(", "));
      problems.add(Problem.refuse("choice.unknown", place, key, keys));
      return;
    }
    FaultPlace where = FaultPlace.ALL_ALONG;
    FaultWhen when = FaultWhen.SEWN;
    int severity = 2;
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
    faults.add(new FaultSeen(key, where, severity, when));
  }
}
