package walebook.act.demo;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;
import walebook.record.Method;
import walebook.record.Needle;
import walebook.record.Parent;
import walebook.record.PlannedPiece;
import walebook.record.Step;

/** What somebody is about to sew: everything that is set before the first stitch. */
record Attempt(
    DemoStudent student,
    Evening evening,
    UUID lessonId,
    @Nullable PlannedPiece planned,
    DemoCloth cloth,
    Method method,
    DemoMachine machine,
    String stitch,
    @Nullable Double width,
    @Nullable Double length,
    Needle needle,
    Step pressure,
    @Nullable Double feed,
    String hemMethod,
    String stabiliser,
    int readings,
    @Nullable Parent parent) {

  Grain grain() {
    return Grain.COURSE;
  }

  /** The same again after another piece, with one thing changed. */
  Attempt again(UUID pieceId, String factor, Change change) {
    return new Attempt(
        student,
        evening,
        lessonId,
        null,
        cloth,
        method,
        machine,
        stitch,
        change.width() == null ? width : change.width(),
        change.length() == null ? length : change.length(),
        change.needle() == null ? needle : change.needle(),
        change.pressure() == null ? pressure : change.pressure(),
        feed,
        hemMethod,
        stabiliser,
        1,
        new Parent(pieceId, factor));
  }

  /** What is changed; all but one are null. */
  record Change(
      @Nullable Double width,
      @Nullable Double length,
      @Nullable Needle needle,
      @Nullable Step pressure) {
    static Change width(double width) {
      return new Change(width, null, null, null);
    }

    static Change length(double length) {
      return new Change(null, length, null, null);
    }

    static Change needle(Needle needle) {
      return new Change(null, null, needle, null);
    }

    static Change pressure(Step pressure) {
      return new Change(null, null, null, pressure);
    }
  }
}
