package walebook.act.piece;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.record.Broke;
import walebook.record.Cloth;
import walebook.record.ClothUse;
import walebook.record.FaultSeen;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.How;
import walebook.record.Measure;
import walebook.record.Parent;
import walebook.record.PieceOutcome;
import walebook.record.Pull;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.Seen;
import walebook.record.Setting;
import walebook.record.Stamp;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.record.Whose;

/**
 * Turns what was typed into a test piece, or into every problem that is in the way. Pure: it asks
 * neither book nor clock, so the form may run it on each keystroke.
 */
public final class ReadPiece {
  /** A code that no piece has: a piece being typed has none yet. */
  static final String NO_CODE = "AAAAAA";

  private static final double USUAL_LENGTH_MM = 1000;
  private static final double USUAL_NEED = 250;
  private static final double USUAL_SECONDS = 7200;
  private static final double USUAL_LOAD_G = 5000;
  private static final double USUAL_MINUTES = 60;

  private final PieceEntry entry;
  private final PieceRoom room;
  private final FieldReader read;

  private ReadPiece(PieceEntry entry, PieceRoom room) {
    this.entry = entry;
    this.room = room;
    this.read = new FieldReader(entry, room.lengthUnit());
  }

  /**
   * Reads an entry.
   *
   * @param today stands for dates that were left empty
   * @param code the piece's code
   * @param parent the piece that it tries again, with what was changed; null when there is none
   */
  public static Answer<TestPiece> read(
      PieceEntry entry,
      PieceRoom room,
      LocalDate today,
      Instant now,
      String code,
      @Nullable Parent parent) {
    return new ReadPiece(entry, room).piece(today, now, code, parent);
  }

  /** What can be made of an entry as it stands, whatever else is wrong with it. */
  static PieceSoFar soFar(PieceEntry entry, PieceRoom room, LocalDate today) {
    ReadPiece read = new ReadPiece(entry, room);
    return new PieceSoFar(
        read.cloth(), new ReadSetting(read.read, room).setting(), read.measure(today));
  }

  private Answer<TestPiece> piece(
      LocalDate today, Instant now, String code, @Nullable Parent parent) {
    ClothUse cloth = cloth();
    Setting setting = new ReadSetting(read, room).setting();
    LocalDate sewnOn = read.date(PieceField.SEWN_ON);
    Measure measure = measure(sewnOn == null ? today : sewnOn);
    Seen seen = seen();
    MeasureLimits.check(read, measure, cloth == null ? null : room.stretch(cloth));
    List<Problem> problems = read.problems();
    if (cloth == null || setting == null || problems.stream().anyMatch(Problem::refuses)) {
      return Answer.bad(problems);
    }
    Whose whose =
        new Whose(
            entry.classId(),
            entry.studentId(),
            entry.lessonId(),
            entry.plannedId(),
            sewnOn == null ? today : sewnOn);
    TestPiece piece =
        new TestPiece(
            entry.pieceId(), code, whose, cloth, setting, measure, seen, parent, Stamp.fresh(now));
    return new Answer.Good<>(piece, problems);
  }

  private @Nullable ClothUse cloth() {
    Map<String, Cloth> byName = new LinkedHashMap<>();
    for (Cloth each : room.cloths()) {
      byName.put(each.name(), each);
      byName.put(each.id().toString(), each);
    }
    Cloth cloth = read.named(PieceField.CLOTH, byName);
    Grain grain = read.choice(PieceField.GRAIN, Grain.class);
    Integer layers = read.whole(PieceField.LAYERS, 1, 6);
    require(PieceField.CLOTH);
    require(PieceField.GRAIN);
    return cloth == null || grain == null
        ? null
        : new ClothUse(cloth.id(), grain, layers == null ? 2 : layers);
  }

  private void require(PieceField field) {
    if (entry.at(field).isEmpty()) {
      read.refuse(field, "field.needed", "");
    }
  }

  private Measure measure(LocalDate sewnOn) {
    Double gauge = read.length(PieceField.GAUGE, USUAL_LENGTH_MM);
    Double before = read.length(PieceField.EDGE_BEFORE, USUAL_LENGTH_MM);
    Double sewn = read.length(PieceField.EDGE_SEWN, USUAL_LENGTH_MM);
    Double pressed = read.length(PieceField.EDGE_PRESSED, USUAL_LENGTH_MM);
    List<PullReading> pulls = pulls(gauge);
    Double released = read.length(PieceField.RELEASED, USUAL_LENGTH_MM);
    LocalDate measuredOn = read.date(PieceField.MEASURED_ON);
    if (measuredOn != null && measuredOn.isBefore(sewnOn)) {
      read.ask(PieceField.MEASURED_ON, "date.measured-before-sewn", sewnOn.toString());
    }
    return new Measure(
        gauge,
        before,
        sewn,
        pressed,
        gauge == null ? List.of() : pulls,
        read.choice(PieceField.BROKE, Broke.class),
        released,
        read.number(PieceField.NEED, 0, USUAL_NEED),
        how(),
        measuredBy(),
        measuredOn == null && !pulls.isEmpty() ? sewnOn : measuredOn,
        read.minutes(PieceField.MINUTES, Measure.MOST_MINUTES, USUAL_MINUTES));
  }

  // A rest belongs to a reading after release; without one the usual seconds would say nothing.
  private How how() {
    Pull pull = read.choice(PieceField.PULL, Pull.class);
    Double load = read.number(PieceField.LOAD, 1, USUAL_LOAD_G);
    if (pull == Pull.LOAD && load == null && entry.at(PieceField.LOAD).isEmpty()) {
      read.refuse(PieceField.LOAD, "field.needed", "500");
    }
    return new How(
        read.choice(PieceField.FOLD, Fold.class),
        pull,
        load,
        read.number(PieceField.HOLD, 0, USUAL_SECONDS),
        entry.at(PieceField.RELEASED).isEmpty()
            ? null
            : read.number(PieceField.REST, 0, USUAL_SECONDS));
  }

  private java.util.@Nullable UUID measuredBy() {
    Map<String, Student> byName = new LinkedHashMap<>();
    for (Student each : room.students()) {
      byName.put(each.name(), each);
      byName.put(each.alias(), each);
      byName.put(each.id().toString(), each);
    }
    Student student = read.named(PieceField.MEASURED_BY, byName);
    return student == null ? null : student.id();
  }

  private List<PullReading> pulls(@Nullable Double gauge) {
    List<PullReading> pulls = new ArrayList<>();
    pull(pulls, PieceField.END, PieceField.END_LENGTH);
    pull(pulls, PieceField.END_2, PieceField.END_LENGTH_2);
    pull(pulls, PieceField.END_3, PieceField.END_LENGTH_3);
    if (!pulls.isEmpty() && gauge == null && entry.at(PieceField.GAUGE).isEmpty()) {
      read.refuse(PieceField.GAUGE, "field.needed", "100 mm");
    }
    return pulls;
  }

  private void pull(List<PullReading> pulls, PieceField how, PieceField length) {
    SeamEnd end = read.choice(how, SeamEnd.class);
    Double mm = read.length(length, USUAL_LENGTH_MM);
    if (end != null && mm != null) {
      pulls.add(new PullReading(pulls.size() + 1, end, mm));
    } else if (mm != null && entry.at(how).isEmpty()) {
      read.refuse(how, "end.needed", "gave, held");
    } else if (end != null && entry.at(length).isEmpty()) {
      read.refuse(length, "field.needed", "152 mm");
    }
  }

  private Seen seen() {
    Answer<List<FaultSeen>> faults =
        FaultText.read(
            entry.at(PieceField.FAULTS), room.faults(), FieldReader.place(PieceField.FAULTS));
    if (!faults.isGood()) {
      read.problems().addAll(faults.problems());
    }
    return new Seen(
        read.whole(PieceField.GRADE, 1, 5),
        read.choice(PieceField.OUTCOME, PieceOutcome.class),
        faults.isGood() ? faults.value() : List.of(),
        entry.at(PieceField.REMARK));
  }
}
