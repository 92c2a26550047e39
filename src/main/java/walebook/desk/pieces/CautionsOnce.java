package walebook.desk.pieces;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceField;
import walebook.desk.common.Session;
import walebook.record.Machine;
import walebook.record.MachineKind;
import walebook.tables.CautionRow;

/** Cautions for what a form is about, each said once a lesson to each student. */
final class CautionsOnce {
  private final Session session;
  private final Set<String> said = new HashSet<>();

  CautionsOnce(Session session) {
    this.session = session;
  }

  /** What is to be said with this form; empty when all was said before. */
  String of(FormStart start) {
    List<String> keys = new ArrayList<>(List.of("pull", "needle-change"));
    if (isOverlocker(start)) {
      keys.add("overlocker");
    }
    UUID student = start.entry().studentId();
    UUID lesson = start.entry().lessonId();
    return keys.stream()
        .filter(key -> said.add(student + "/" + lesson + "/" + key))
        .map(this::row)
        .filter(row -> row != null)
        .map(row -> session.words().say("desk.common.caution", row.says()))
        .collect(Collectors.joining("\n\n"));
  }

  private @Nullable CautionRow row(String key) {
    return session.tables().cautions().stream()
        .filter(each -> each.key().equals(key))
        .findFirst()
        .orElse(null);
  }

  private static boolean isOverlocker(FormStart start) {
    String number = start.entry().at(PieceField.MACHINE);
    for (Machine each : start.room().machines()) {
      if (String.valueOf(each.number()).equals(number)) {
        return each.kind() == MachineKind.OVERLOCKER;
      }
    }
    return false;
  }
}
