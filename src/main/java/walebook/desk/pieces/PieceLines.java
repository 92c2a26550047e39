package walebook.desk.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceField;
import walebook.desk.pieces.WholePiece.Line;
import walebook.quantity.Show;
import walebook.record.Dial;
import walebook.record.FaultSeen;
import walebook.record.How;
import walebook.record.Keyed;
import walebook.record.Machine;
import walebook.record.Measure;
import walebook.record.PullReading;
import walebook.record.Seen;
import walebook.record.Setting;
import walebook.record.TestPiece;
import walebook.words.Words;

/** A piece's settings, measures and looks as labelled lines; what was not noted is left out. */
final class PieceLines {
  private final Words words;
  private final PieceWords say;

  PieceLines(Words words, PieceWords say) {
    this.words = words;
    this.say = say;
  }

  /**
   * The settings.
   *
   * @param machine with its card; null when it is not known
   */
  List<Line> settings(TestPiece piece, @Nullable Machine machine) {
    Setting set = piece.setting();
    Lines lines = new Lines();
    lines.add(PieceField.CLOTH, say.name(piece.cloth().clothId()));
    lines.add(PieceField.GRAIN, choice(piece.cloth().grain()));
    lines.add(PieceField.LAYERS, String.valueOf(piece.cloth().layers()));
    lines.add(PieceField.METHOD, choice(set.method()));
    lines.add(PieceField.MACHINE, say.name(set.machineId()));
    lines.add(PieceField.STITCH, set.stitchName() + number(set.stitchType()));
    lines.add(PieceField.DIAL_WIDTH, dial(machine, Dial.WIDTH, set.dialWidth(), set.sewnWidthMm()));
    lines.add(
        PieceField.DIAL_LENGTH, dial(machine, Dial.LENGTH, set.dialLength(), set.sewnLengthMm()));
    if (set.needle() != null) {
      lines.add(
          PieceField.NEEDLE_POINT, choice(set.needle().point()) + ", Nm " + set.needle().nm());
    }
    lines.add(PieceField.HEM_METHOD, set.hemMethod());
    lines.add(PieceField.DIFFERENTIAL_FEED, number(set.differentialFeed()));
    lines.add(PieceField.THREAD, set.thread());
    lines.add(PieceField.PRESSURE, choice(set.pressure()) + onDial(set.pressureDial()));
    lines.add(PieceField.TENSION, choice(set.tension()) + onDial(set.tensionDial()));
    lines.add(PieceField.STABILISER, set.stabiliser());
    return lines.all;
  }

  List<Line> measures(TestPiece piece) {
    Measure measure = piece.measure();
    Lines lines = new Lines();
    lines.add(PieceField.GAUGE, length(measure.gaugeMm()));
    lines.add(PieceField.EDGE_BEFORE, length(measure.edgeBeforeMm()));
    lines.add(PieceField.EDGE_SEWN, length(measure.edgeSewnMm()));
    lines.add(PieceField.EDGE_PRESSED, length(measure.edgePressedMm()));
    lines.add(
        PieceField.END, measure.pulls().stream().map(say::end).collect(Collectors.joining("; ")));
    PullReading pull = measure.counting();
    if (pull != null) {
      lines.all.add(new Line(words.say("desk.pieces.seam-stretch"), say.stretch(piece) + " %"));
    }
    lines.add(PieceField.BROKE, choice(measure.broke()));
    lines.add(PieceField.RELEASED, length(measure.releasedMm()));
    lines.add(PieceField.NEED, number(measure.needPercent()));
    lines.add(PieceField.MINUTES, number(measure.sewingMinutes()));
    How how = measure.how();
    lines.add(PieceField.FOLD, choice(how.fold()));
    lines.add(PieceField.PULL, choice(how.pull()));
    lines.add(PieceField.LOAD, number(how.loadG()));
    lines.add(PieceField.HOLD, number(how.holdS()));
    lines.add(PieceField.REST, number(how.restS()));
    lines.add(PieceField.MEASURED_BY, say.name(measure.measuredBy()));
    return lines.all;
  }

  List<Line> seen(TestPiece piece) {
    Seen seen = piece.seen();
    Lines lines = new Lines();
    if (seen.grade() != null) {
      lines.add(PieceField.GRADE, words.say("desk.pieces.grade." + seen.grade()));
    }
    for (FaultSeen fault : seen.faults()) {
      lines.all.add(new Line(say.fault(fault.fault()), fault(fault)));
    }
    lines.add(PieceField.OUTCOME, choice(seen.outcome()));
    lines.add(PieceField.REMARK, seen.remark());
    return lines.all;
  }

  private String fault(FaultSeen fault) {
    return words.say(
        "desk.pieces.fault-line",
        words.say("desk.pieces.severity." + fault.severity()),
        choice(fault.place()),
        choice(fault.when()));
  }

  private String dial(
      @Nullable Machine machine, Dial what, @Nullable Double dial, @Nullable Double sewnMm) {
    if (dial == null || sewnMm == null || dial.equals(sewnMm)) {
      return number(dial);
    }
    // Beyond its readings the card is drawn on; what was measured on the piece itself is not.
    Double byCard = machine == null ? null : machine.sewn(what, dial);
    if (machine != null && sewnMm.equals(byCard) && !machine.reaches(what, dial)) {
      return words.say("desk.pieces.dial-guessed", number(dial), Show.upTo(sewnMm, 2));
    }
    return words.say("desk.pieces.dial-sewn", number(dial), Show.upTo(sewnMm, 2));
  }

  private String onDial(String dial) {
    return dial.isBlank() ? "" : " " + words.say("desk.pieces.on-dial", dial);
  }

  private String choice(@Nullable Keyed choice) {
    return choice == null ? "" : words.say("common.choice." + choice.key());
  }

  private String length(@Nullable Double mm) {
    return mm == null ? "" : Show.length(mm, say.unit());
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : Show.upTo(value, 2);
  }

  private static String number(String stitchType) {
    return stitchType.matches("[0-9]+") ? " · " + stitchType : "";
  }

  private final class Lines {
    private final List<Line> all = new ArrayList<>();

    void add(PieceField field, String value) {
      if (!value.isBlank()) {
        all.add(new Line(words.say("desk.pieces.field." + field.key()), value));
      }
    }
  }
}
