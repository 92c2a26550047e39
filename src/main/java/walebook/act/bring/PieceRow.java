package walebook.act.bring;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import walebook.act.bring.match.BringField;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Machine;
import walebook.record.PieceCode;

/** Fills the log form from one row. */
final class PieceRow {
  private static final PieceField[] ENDS = {PieceField.END, PieceField.END_2, PieceField.END_3};
  private static final PieceField[] LENGTHS = {
    PieceField.END_LENGTH, PieceField.END_LENGTH_2, PieceField.END_LENGTH_3
  };
  private static final Pattern PULL = Pattern.compile("(.+?)\\s+([0-9].*)");

  private final PieceTable table;
  private final CellReader cells;
  private final Map<PieceField, String> typed = new EnumMap<>(PieceField.class);
  private final List<Problem> problems = new ArrayList<>();

  PieceRow(PieceTable table, CellReader cells) {
    this.table = table;
    this.cells = cells;
  }

  /** What is wrong with cells before the form's own checks. */
  List<Problem> problems() {
    List<Problem> all = new ArrayList<>(cells.problems());
    all.addAll(problems);
    return all.stream().distinct().toList();
  }

  CellReader cells() {
    return cells;
  }

  /** The code in the row, bare; empty when there is none. */
  String code() {
    return PieceCode.bare(cells.text(BringField.CODE));
  }

  String parentCode() {
    return PieceCode.bare(cells.text(BringField.AGAIN_OF));
  }

  String changed() {
    return cells.text(BringField.CHANGED);
  }

  /** The form as a person would have filled it; without the student no piece can be read. */
  PieceEntry entry(
      UUID pieceId, UUID student, @Nullable UUID parent, @Nullable UUID plannedLesson) {
    for (PieceField field : PieceField.values()) {
      put(field, cells.text(field.key()));
    }
    needle();
    machine();
    put(PieceField.FAULTS, table.faults().typed(typed.getOrDefault(PieceField.FAULTS, "")));
    pulls(cells.text(BringField.ALL_PULLS));
    noDay(cells.place(PieceField.SEWN_ON.key()));
    return new PieceEntry(
        pieceId,
        table.plan().classId(),
        student,
        lesson(cells.text(BringField.LESSON), plannedLesson),
        null,
        null,
        parent,
        typed);
  }

  /** A day that could not be read is not also missing. */
  private void noDay(Place place) {
    boolean said = cells.problems().stream().anyMatch(each -> each.place().equals(place));
    if (!typed.containsKey(PieceField.SEWN_ON) && !said) {
      problems.add(Problem.ask("bring.no-day", place, "", table.today().toString()));
    }
  }

  /** Whose it is, or null with the reason noted. */
  @Nullable UUID student() {
    String name = cells.text(BringField.STUDENT);
    UUID forAll = table.plan().studentId();
    if (name.isEmpty() && forAll != null) {
      return forAll;
    }
    UUID found = table.student(name);
    if (found == null) {
      problems.add(
          Problem.refuse(
              name.isEmpty() ? "field.needed" : "bring.no-student",
              cells.place(BringField.STUDENT),
              name,
              ""));
    }
    return found;
  }

  private @Nullable UUID lesson(String title, @Nullable UUID planned) {
    if (title.isEmpty() || table.lessons().isOneOf(title, planned)) {
      return planned;
    }
    UUID lesson = table.lessons().find(title, cells.text(PieceField.SEWN_ON.key()));
    if (lesson == null) {
      Place place = cells.place(BringField.LESSON);
      Problem none = Problem.ask("bring.no-lesson", place, title, "");
      problems.add(table.lessons().notFound(title, place, none));
    }
    return lesson;
  }

  private void put(PieceField field, String text) {
    if (!text.isEmpty()) {
      typed.put(field, table.choices().key(field.key(), text));
    }
  }

  private void needle() {
    String needle = cells.text(BringField.NEEDLE);
    if (!needle.isEmpty() && !typed.containsKey(PieceField.NEEDLE_POINT)) {
      put(PieceField.NEEDLE_POINT, NeedleText.pointIn(needle));
    }
    if (!needle.isEmpty() && !typed.containsKey(PieceField.NEEDLE_NM)) {
      put(PieceField.NEEDLE_NM, NeedleText.sizeIn(needle));
    }
  }

  private void machine() {
    String text = typed.getOrDefault(PieceField.MACHINE, "").toLowerCase(Locale.ROOT);
    for (Machine each : table.room().machines()) {
      if (!text.isEmpty()
          && (text.equals(each.label().toLowerCase(Locale.ROOT))
              || text.equals(each.name().toLowerCase(Locale.ROOT)))) {
        typed.put(PieceField.MACHINE, String.valueOf(each.number()));
        return;
      }
    }
  }

  /** All pulls in one cell, as our own workbook has them: {@code gave 152; held 160}, in mm. */
  private void pulls(String all) {
    if (all.isEmpty()) {
      return;
    }
    Place place = cells.place(BringField.ALL_PULLS);
    String[] pulls = all.split(";", -1);
    if (pulls.length > ENDS.length) {
      problems.add(Problem.refuse("bring.pulls", place, String.valueOf(pulls.length), "3"));
      return;
    }
    for (int i = 0; i < pulls.length; i++) {
      Matcher pull = PULL.matcher(pulls[i].strip());
      if (!pull.matches()) {
        problems.add(Problem.refuse("bring.pull-form", place, pulls[i].strip(), ""));
        return;
      }
      put(ENDS[i], pull.group(1));
      String length = pull.group(2).strip();
      put(LENGTHS[i], length.matches("[0-9.,]+") ? length + " mm" : length);
    }
  }
}
