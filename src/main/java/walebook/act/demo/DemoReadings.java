package walebook.act.demo;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.record.ClothReading;
import walebook.record.ClothWash;
import walebook.record.CutEdge;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.How;
import walebook.record.PlannedReading;
import walebook.record.Pull;

/**
 * Readings of the demo's cloths: each pair of hands pulls a little harder or softer than the room
 * and scatters in its own way, so that agreement is there to be looked into.
 */
final class DemoReadings {
  private static final double GAUGE_MM = 100;
  private static final double MIXED_UP = 0.015;

  private final Book book;
  private final DemoRoom room;
  private final Chance chance;

  DemoReadings(Book book, DemoRoom room, Chance chance) {
    this.book = book;
    this.room = room;
    this.chance = chance;
  }

  void save(DemoLessons.Taught taught) {
    int minute = 30;
    for (PlannedReading each : taught.readings()) {
      for (int repeat = 1; repeat <= each.repeats(); repeat++) {
        book.clothLog().add(reading(taught, each, minute++ % 90));
      }
    }
  }

  private ClothReading reading(DemoLessons.Taught taught, PlannedReading asked, int minute) {
    DemoStudent student = hands(asked.studentId());
    UUID clothId = clothOf(asked.clothId());
    DemoCloth cloth = room.cloth(clothId);
    // Somebody always pulls the wrong way once and writes down the other grain.
    Grain pulled = chance.happens(MIXED_UP) ? other(asked.grain()) : asked.grain();
    double stretch =
        cloth.stretch(pulled) * (1 + student.pullsHarder()) + chance.normal(student.scatter());
    double stretched = Math.rint(GAUGE_MM * (1 + stretch / 100));
    double stays = stretch * cloth.growth() * (1 + chance.normal(0.2));
    double released = Math.rint(2 * GAUGE_MM * (1 + Math.max(0, stays) / 100)) / 2;
    return new ClothReading(
        Ids.next(),
        clothId,
        room.schoolClass().id(),
        taught.lesson().id(),
        asked.studentId(),
        asked.grain(),
        GAUGE_MM,
        stretched,
        released,
        new How(Fold.FOLDED, Pull.FIRM, null, 30.0, 60.0),
        CutEdge.INSIDE,
        1,
        taught.evening().date(),
        "",
        taught.evening().stamp(minute));
  }

  /** What one wash did to each cloth, both ways. */
  void saveWashes() {
    Evening evening = Evening.ALL.get(2);
    for (DemoCloth each : DemoCloth.ALL) {
      for (Grain grain : new Grain[] {Grain.WALE, Grain.COURSE}) {
        double shrinks = (each.elastane() > 10 ? 0.5 : 4) * (grain == Grain.WALE ? 1.3 : 0.7);
        double after = Math.rint(500 * (1 - (shrinks + chance.normal(0.4)) / 100));
        book.clothLog()
            .add(
                new ClothWash(
                    Ids.next(),
                    room.row(each).id(),
                    grain,
                    500,
                    after,
                    "40 °C, line dried",
                    evening.date(),
                    evening.stamp(0)));
      }
    }
  }

  private DemoStudent hands(UUID studentId) {
    return room.students().entrySet().stream()
        .filter(each -> each.getValue().id().equals(studentId))
        .findFirst()
        .orElseThrow()
        .getKey();
  }

  private static UUID clothOf(@Nullable UUID clothId) {
    if (clothId == null) {
      throw new IllegalStateException("every cloth of the demo's plans is chosen");
    }
    return clothId;
  }

  private static Grain other(Grain grain) {
    return grain == Grain.WALE ? Grain.COURSE : Grain.WALE;
  }
}
