package walebook.act.demo;

import java.nio.charset.StandardCharsets;
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
import walebook.act.lesson.TakeUpLesson;
import walebook.book.Book;
import walebook.lesson.BuiltInPacks;
import walebook.lesson.LessonPack;
import walebook.lesson.PackBytes;
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
  private final ReadPack read = new ReadPack();
  private final Set<String> codes = new HashSet<>();
  private final Map<String, LessonPack> packs = new HashMap<>();

  DemoLessons(Book book, DemoRoom room, Chance chance) {
    this.book = book;
    this.room = room;
    this.chance = chance;
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

  /** Taken up as any class takes it up, on the evening itself. */
  private Taught teach(Evening evening) {
    Clock then = Clock.fixed(evening.stamp(0).created(), ZoneOffset.UTC);
    LessonPack pack = pack(evening);
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
    if (evening.pulls() > 1) {
      // The tutor's own pack stands on the shelf, too.
      book.packShelf().put(lesson.packId());
    }
    List<PlannedPiece> pieces = book.lessons().planOf(lesson.id());
    pieces.forEach(each -> codes.add(each.code()));
    return new Taught(
        evening,
        lesson,
        pieces,
        book.readingPlans().of(lesson.id()).stream().map(ReadingLine::planned).toList());
  }

  private Map<String, UUID> cloths(Evening evening) {
    Map<String, UUID> cloths = new LinkedHashMap<>();
    evening.cloths().forEach((slot, cloth) -> cloths.put(slot, room.row(cloth).id()));
    return cloths;
  }

  private LessonPack pack(Evening evening) {
    LessonPack pack = packs.computeIfAbsent(evening.pack(), this::ofProgram);
    return evening.pulls() == 1 ? pack : pulledMore(pack, evening.pulls());
  }

  private LessonPack ofProgram(String name) {
    return BuiltInPacks.all().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .map(each -> read.read(each).value())
        .orElseThrow(() -> new IllegalStateException("the program lacks its pack " + name));
  }

  /** The tutor's own copy of a pack, as one would change it to have each piece pulled more. */
  private LessonPack pulledMore(LessonPack pack, int pulls) {
    String own = pack.about().name() + "-pulled-more";
    String yaml =
        pack.files()
            .packYaml()
            .replace("name: " + pack.about().name(), "name: " + own)
            .replace(
                "title: " + pack.about().title(),
                "title: " + pack.about().title() + ", pulled again")
            .replace("  readings: " + pack.measure().readings(), "  readings: " + pulls);
    Map<String, byte[]> files = new HashMap<>(pack.files().byName());
    files.put("pack.yaml", yaml.getBytes(StandardCharsets.UTF_8));
    return read.read(new PackBytes(own, files)).value();
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
