package walebook.desk.pieces;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.OneChange;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.desk.common.Session;
import walebook.record.Machine;
import walebook.record.MachineKind;
import walebook.record.NeedlePoint;
import walebook.record.Parent;
import walebook.record.TestPiece;
import walebook.seam.Factor;
import walebook.seam.Remedy;
import walebook.seam.StitchType;
import walebook.tables.CautionRow;

/**
 * Cautions for what a form is about, each said once a lesson to each student; but whoever is to
 * change needle, plate or iron is told each time, and so is whoever sews with a twin needle.
 */
final class CautionsOnce {
  private static final String NEEDLE = "needle-change";
  private static final String PLATE = "plate";

  /** Settings for which a hand goes to the needle. */
  private static final Set<PieceField> AT_THE_NEEDLE =
      Set.of(PieceField.STITCH, PieceField.NEEDLE_POINT, PieceField.NEEDLE_NM, PieceField.THREAD);

  private final Session session;
  private final Set<String> said = new HashSet<>();
  private List<String> once = List.of();

  CautionsOnce(Session session) {
    this.session = session;
  }

  /** Takes up a form; what it says of its own is counted as said from now on. */
  void begin(FormStart start) {
    List<String> keys = new ArrayList<>(List.of("pull", NEEDLE));
    if (isOverlocker(start, start.entry())) {
      keys.add("overlocker");
    }
    UUID student = start.entry().studentId();
    UUID lesson = start.entry().lessonId();
    once = keys.stream().filter(key -> said.add(student + "/" + lesson + "/" + key)).toList();
  }

  /** What is to be said with the form as it is filled now; empty when all was said before. */
  String of(FormStart start, PieceEntry now) {
    Set<String> keys = new LinkedHashSet<>(once);
    if (start.mending() == null) {
      if (isTwin(start, now)) {
        keys.add("twin-needle");
      }
      PieceEntry before = start.before();
      if (before != null) {
        keys.addAll(ofChange(start, before, now));
      }
    }
    return keys.stream()
        .map(this::row)
        .filter(Objects::nonNull)
        .map(row -> session.words().say("desk.common.caution", row.says()))
        .collect(Collectors.joining("\n\n"));
  }

  private Set<String> ofChange(FormStart start, PieceEntry before, PieceEntry now) {
    Set<String> keys = new LinkedHashSet<>();
    List<PieceField> changed = OneChange.fields(before, now, start.room());
    if (changed.stream().anyMatch(AT_THE_NEEDLE::contains)) {
      keys.add(NEEDLE);
    }
    if (changed.contains(PieceField.STITCH) && isOverlocker(start, now)) {
      keys.add("overlocker");
    }
    String byHand = now.at(PieceField.OTHER_CHANGE).strip();
    if (!byHand.isEmpty()) {
      keys.addAll(byHand(factor(byHand)));
    }
    // What was put in for an attempt before may sit in the machine still.
    if (start.chain().stream().anyMatch(this::hadPlate)) {
      keys.add(PLATE);
    }
    return keys;
  }

  private static List<String> byHand(@Nullable Factor factor) {
    if (factor == null) {
      return List.of(NEEDLE);
    }
    return switch (factor) {
      case PLATE -> List.of(NEEDLE, PLATE);
      case NEEDLE_NEW, NEEDLE_GAP, FOOT, TENSION_UNDER, HANDLING -> List.of(NEEDLE);
      case PRESSING -> List.of("iron");
      case CUTTING -> List.of("rotary-cutter");
      default -> List.of();
    };
  }

  private boolean hadPlate(TestPiece attempt) {
    Parent parent = attempt.parent();
    return parent != null && factor(parent.byHand()) == Factor.PLATE;
  }

  /** What a change by hand changes; null for words that are none of the table's. */
  private @Nullable Factor factor(String byHand) {
    return session.tables().faults().stream()
        .flatMap(each -> each.remedies().stream())
        .filter(each -> each.says().equals(byHand))
        .map(Remedy::factor)
        .findFirst()
        .orElse(null);
  }

  private @Nullable CautionRow row(String key) {
    return session.tables().cautions().stream()
        .filter(each -> each.key().equals(key))
        .findFirst()
        .orElse(null);
  }

  /** Two needles in one shank, on a machine whose needle could swing. */
  private static boolean isTwin(FormStart start, PieceEntry now) {
    StitchType stitch = start.room().stitch(now.at(PieceField.STITCH));
    return now.at(PieceField.NEEDLE_POINT).equals(NeedlePoint.TWIN_STRETCH.key())
        || (stitch != null
            && stitch.needles() == 2
            && stitch.machines().contains(MachineKind.SEWING.key()));
  }

  private static boolean isOverlocker(FormStart start, PieceEntry now) {
    String number = now.at(PieceField.MACHINE);
    for (Machine each : start.room().machines()) {
      if (String.valueOf(each.number()).equals(number)) {
        return each.kind() == MachineKind.OVERLOCKER;
      }
    }
    return false;
  }
}
