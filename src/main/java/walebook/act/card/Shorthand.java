package walebook.act.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
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
import walebook.seam.Fault;

/** Choices by their first letters: {@code g} for gave, {@code w} for wale-wise. */
public final class Shorthand {
  private Shorthand() {}

  /** The keys that can be chosen in a field; empty for one that is typed or named. */
  public static List<String> keys(PieceField field, PieceRoom room) {
    return switch (field) {
      case END, END_2, END_3 -> keys(SeamEnd.values());
      case BROKE -> keys(Broke.values());
      case OUTCOME -> keys(PieceOutcome.values());
      case GRAIN -> keys(Grain.values());
      case METHOD -> keys(Method.values());
      case NEEDLE_POINT -> keys(NeedlePoint.values());
      case PRESSURE, TENSION -> keys(Step.values());
      case FOLD -> keys(Fold.values());
      case PULL -> keys(Pull.values());
      case FAULTS -> room.faults().stream().map(Fault::key).toList();
      default -> List.of();
    };
  }

  private static List<String> keys(Keyed[] values) {
    return Stream.of(values).map(Keyed::key).toList();
  }

  /** The text with each beginning of one single key made whole; any other text as it is. */
  public static String whole(PieceField field, String typed, PieceRoom room) {
    List<String> keys = keys(field, room);
    if (keys.isEmpty() || typed.isBlank()) {
      return typed;
    }
    if (field != PieceField.FAULTS) {
      return one(keys, typed.strip());
    }
    List<String> faults = new ArrayList<>();
    for (String fault : typed.split(";", -1)) {
      String[] parts = fault.strip().split(",", 2);
      String rest = parts.length > 1 ? "," + parts[1] : "";
      faults.add(one(keys, parts[0].strip()) + rest);
    }
    return faults.stream().filter(each -> !each.isEmpty()).collect(Collectors.joining(";"));
  }

  private static String one(List<String> keys, String typed) {
    String start = typed.toLowerCase(Locale.ROOT);
    if (start.isEmpty() || keys.contains(start)) {
      return start;
    }
    List<String> near = keys.stream().filter(each -> each.startsWith(start)).toList();
    return near.size() == 1 ? near.get(0) : typed;
  }
}
