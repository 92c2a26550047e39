package walebook.act.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.record.Method;
import walebook.record.Needle;
import walebook.record.NeedlePoint;
import walebook.record.PieceAsked;
import walebook.record.PieceOutcome;
import walebook.record.PlannedPiece;
import walebook.record.SeamEnd;
import walebook.record.Step;
import walebook.record.TestPiece;
import walebook.seam.StitchType;

/** All of the demo's test pieces, evening by evening. */
final class DemoPieces {
  private static final double MISSED = 0.03;
  private static final double TRIES_AGAIN = 0.6;
  private static final int EVENING_MINUTES = 110;

  private final Book book;
  private final DemoRoom room;
  private final DemoLessons lessons;
  private final Chance chance;
  private final DemoSewing sewing;
  private final List<TestPiece> sewn = new ArrayList<>();

  DemoPieces(
      Book book,
      DemoRoom room,
      DemoLessons lessons,
      Map<String, StitchType> stitches,
      Chance chance) {
    this.book = book;
    this.room = room;
    this.lessons = lessons;
    this.chance = chance;
    this.sewing = new DemoSewing(room, stitches, chance);
  }

  void save(List<DemoLessons.Taught> taught) {
    for (DemoLessons.Taught each : taught) {
      room.students().keySet().forEach(student -> evening(each, student));
    }
    DemoSlips.slip(sewn).forEach(book.pieces()::add);
  }

  private void evening(DemoLessons.Taught taught, DemoStudent student) {
    UUID row = room.row(student).id();
    List<PlannedPiece> plan =
        taught.pieces().stream().filter(each -> each.studentId().equals(row)).toList();
    // The book is opened in the middle of the last evening: everyone still has a piece to sew.
    int sewnToday = taught.evening().isLast() ? Math.min(3, plan.size() - 1) : plan.size();
    List<PlannedPiece> now = plan.subList(0, sewnToday);
    for (PlannedPiece each : now) {
      if (!chance.happens(MISSED)) {
        TestPiece piece = sew(attempt(taught, student, each), each.code());
        tryAgain(attempt(taught, student, each), piece);
      }
    }
    if (!taught.evening().isLast()) {
      DemoHems.of(taught, student, chance).forEach(each -> sew(each, lessons.code()));
    }
  }

  private TestPiece sew(Attempt attempt, String code) {
    TestPiece piece = sewing.sew(attempt, code, 20 + sewn.size() % EVENING_MINUTES);
    sewn.add(piece);
    return piece;
  }

  private Attempt attempt(DemoLessons.Taught taught, DemoStudent student, PlannedPiece planned) {
    PieceAsked asked = planned.asked();
    UUID clothId = planned.clothId();
    if (clothId == null) {
      throw new IllegalStateException("every cloth of the demo's plans is chosen");
    }
    return new Attempt(
        student,
        taught.evening(),
        taught.lesson().id(),
        planned,
        room.cloth(clothId),
        asked.method(),
        DemoMachine.numbered(student.machine()),
        asked.stitchType(),
        asked.dialWidth(),
        asked.dialLength(),
        needle(asked, student, taught.evening()),
        pressure(student, taught.evening()),
        null,
        asked.hemMethod(),
        asked.stabiliser(),
        asked.readings(),
        null);
  }

  /** Who is new to it takes what is in the machine. */
  private static Needle needle(PieceAsked asked, DemoStudent student, Evening evening) {
    boolean careless = student.skillIn(evening.week()) < 0.5;
    Needle wanted = asked.needle();
    return wanted == null || careless ? new Needle(NeedlePoint.UNIVERSAL, 80) : wanted;
  }

  private Step pressure(DemoStudent student, Evening evening) {
    double skill = student.skillIn(evening.week());
    if (chance.happens(0.45 * (1 - skill))) {
      return Step.HIGHER;
    }
    return chance.happens(0.35 * skill) ? Step.LOWER : Step.NORMAL;
  }

  private void tryAgain(Attempt before, TestPiece piece) {
    boolean control = before.stitch().equals("301");
    if (control || piece.seen().outcome() != PieceOutcome.CHANGE || !chance.happens(TRIES_AGAIN)) {
      return;
    }
    Attempt next = next(before, piece);
    if (next != null) {
      tryAgain(next, sew(next, lessons.code()));
    }
  }

  /** What a tutor would change first; null when there is nothing left to try. */
  private static @Nullable Attempt next(Attempt before, TestPiece piece) {
    UUID id = piece.id();
    if (has(piece, "skipped-stitches") && before.needle().point() != NeedlePoint.STRETCH) {
      Needle stretch = new Needle(NeedlePoint.STRETCH, 75);
      return before.again(id, "needle-point needle-nm", Attempt.Change.needle(stretch));
    }
    if (has(piece, "wavy-seam") && before.pressure() != Step.LOWER) {
      return before.again(id, "pressure", Attempt.Change.pressure(Step.LOWER));
    }
    boolean gave = piece.measure().pulls().stream().anyMatch(each -> each.end() == SeamEnd.GAVE);
    Double length = before.length();
    Double width = before.width();
    if (gave && length != null && length > 1.5) {
      return before.again(id, "dial-length", Attempt.Change.length(length - 0.5));
    }
    if (gave && width != null && width < 3 && before.method() == Method.SEAM) {
      return before.again(id, "dial-width", Attempt.Change.width(width + 1));
    }
    return null;
  }

  private static boolean has(TestPiece piece, String fault) {
    return piece.seen().faults().stream().anyMatch(each -> each.fault().equals(fault));
  }
}
