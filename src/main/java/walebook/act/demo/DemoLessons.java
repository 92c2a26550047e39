package walebook.act.demo;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import walebook.act.lesson.HandOut;
import walebook.act.lesson.KeepPack;
import walebook.act.lesson.TakeUpLesson;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.lesson.BuiltInPacks;
import walebook.lesson.LessonPack;
import walebook.lesson.PackSource;
import walebook.lesson.PiecesPlan;
import walebook.lesson.PlanPieces;
import walebook.lesson.PlanStudent;
import walebook.lesson.ReadPack;
import walebook.record.Lesson;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.PlannedReading;
import walebook.record.ReadingLine;

/** The demo's six lessons, taught from the packs that come with the program. */
final class DemoLessons {
  private final Book book;
  private final DemoRoom room;
  private final Chance chance;
  private final Set<String> codes = new HashSet<>();
  private final Map<String, LessonPack> packs = new HashMap<>();

  DemoLessons(Book book, DemoRoom room, Chance chance) {
    this.book = book;
    this.room = room;
    this.chance = chance;
    ReadPack read = new ReadPack();
    for (PackSource each : BuiltInPacks.all()) {
      packs.put(each.name(), read.read(each).value());
    }
  }

  /** A lesson with what it asks of each student. */
  record Taught(
      Evening evening, Lesson lesson, List<PlannedPiece> pieces, List<PlannedReading> readings) {
    Taught {
      pieces = List.copyOf(pieces);
      readings = List.copyOf(readings);
    }
  }

  List<Taught> save() {
    List<Taught> taught = new ArrayList<>();
    for (Evening each : Evening.ALL) {
      taught.add(teach(each));
    }
    return taught;
  }

  private Taught teach(Evening evening) {
    LessonPack pack = pack(evening.pack());
    return pack.plan() instanceof PiecesPlan plan
        ? sewn(evening, pack, plan)
        : measured(evening, pack);
  }

  /** Taken up as any class takes it up, on the evening itself. */
  private Taught measured(Evening evening, LessonPack pack) {
    Clock then = Clock.fixed(evening.stamp(0).created(), ZoneOffset.UTC);
    Lesson lesson =
        new TakeUpLesson(book, then)
            .titled(evening.title())
            .takeUp(
                pack,
                room.schoolClass().id(),
                evening.date(),
                cloths(evening),
                chance.source().nextLong())
            .value();
    List<PlannedReading> readings =
        book.readingPlans().of(lesson.id()).stream().map(ReadingLine::planned).toList();
    return new Taught(evening, lesson, List.of(), readings);
  }

  private Taught sewn(Evening evening, LessonPack pack, PiecesPlan plan) {
    UUID packId = KeepPack.in(book, pack, evening.stamp(0));
    Lesson lesson =
        new Lesson(
            Ids.next(),
            room.schoolClass().id(),
            packId,
            evening.title(),
            evening.date(),
            evening.stamp(0));
    book.lessons().add(lesson);
    List<PlanStudent> students =
        room.students().values().stream().map(s -> new PlanStudent(s.id(), s.tier())).toList();
    long seed = chance.source().nextLong();
    List<PlannedPiece> pieces =
        PlanPieces.plan(plan, evening.readings(), students, cloths(evening), seed).stream()
            .map(each -> HandOut.piece(each, lesson.id(), code(), evening.stamp(0)))
            .toList();
    book.lessons().plan(pieces);
    return new Taught(evening, lesson, pieces, List.of());
  }

  private Map<String, UUID> cloths(Evening evening) {
    Map<String, UUID> cloths = new LinkedHashMap<>();
    evening.cloths().forEach((slot, cloth) -> cloths.put(slot, room.row(cloth).id()));
    return cloths;
  }

  private LessonPack pack(String name) {
    LessonPack pack = packs.get(name);
    if (pack == null) {
      throw new IllegalStateException("the program lacks its pack " + name);
    }
    return pack;
  }

  /** A code that no piece of the demo has. */
  String code() {
    String code = PieceCode.draw(chance.source());
    while (!codes.add(code)) {
      code = PieceCode.draw(chance.source());
    }
    return code;
  }
}
