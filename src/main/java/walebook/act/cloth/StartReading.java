package walebook.act.cloth;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.ReadTaught;
import walebook.book.Book;
import walebook.lesson.LessonPack;
import walebook.lesson.MeasureAsked;
import walebook.lesson.ReadPack;
import walebook.problem.Answer;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.Grain;
import walebook.record.Lesson;
import walebook.record.PlannedReading;
import walebook.record.ReadingLine;
import walebook.record.Student;

/**
 * Begins the reading that a plan asks for: its cloth and grain, measured as the lesson measures.
 */
public final class StartReading {
  private final Book book;

  public StartReading(Book book) {
    this.book = book;
  }

  /**
   * A reading to be made.
   *
   * @param line what is asked and measured so far
   * @param cloth the room's cloth
   * @param typed the form's fields as the lesson measures, in the book's unit; those of {@link
   *     LogClothReading}
   * @param next what the student is to measure after it in this lesson, or null
   */
  public record Asked(
      ReadingLine line,
      Lesson lesson,
      Student student,
      Cloth cloth,
      Map<String, String> typed,
      @Nullable Next next) {
    public Asked {
      typed = Map.copyOf(typed);
    }

    public LogClothReading.Whose whose() {
      return new LogClothReading.Whose(
          cloth.id(), lesson.classId(), lesson.id(), line.planned().studentId());
    }
  }

  /** What comes after: a planned reading by its key, with its cloth by name. */
  public record Next(UUID plannedId, String cloth, Grain grain) {}

  /** The reading with this key, or null when it was taken back or its cloth is not chosen. */
  public @Nullable Asked of(UUID plannedId) {
    PlannedReading planned = book.readingPlans().find(plannedId);
    UUID clothId = planned == null ? null : planned.clothId();
    if (planned == null || planned.dropped() || clothId == null) {
      return null;
    }
    Lesson lesson = book.lessons().find(planned.lessonId());
    Student student = book.students().find(planned.studentId());
    Cloth cloth = book.cloths().find(clothId);
    if (lesson == null || student == null || cloth == null) {
      return null;
    }
    List<ReadingLine> mine =
        book.readingPlans().of(lesson.id()).stream()
            .filter(each -> each.planned().studentId().equals(student.id()))
            .toList();
    ReadingLine line =
        mine.stream()
            .filter(each -> each.planned().id().equals(plannedId))
            .findFirst()
            .orElse(new ReadingLine(planned, List.of()));
    return new Asked(line, lesson, student, cloth, fields(planned, lesson), next(planned, mine));
  }

  private @Nullable Next next(PlannedReading now, List<ReadingLine> mine) {
    for (ReadingLine each : mine) {
      UUID clothId = each.planned().clothId();
      if (!each.isDone() && clothId != null && !each.planned().id().equals(now.id())) {
        Cloth cloth = book.cloths().find(clothId);
        return new Next(
            each.planned().id(), cloth == null ? "" : cloth.name(), each.planned().grain());
      }
    }
    return null;
  }

  private Map<String, String> fields(PlannedReading planned, Lesson lesson) {
    Unit unit = book.info().lengthUnit();
    Map<String, String> typed = new HashMap<>();
    typed.put("grain", planned.grain().key());
    Answer<LessonPack> pack = new ReadTaught(book, new ReadPack()).pack(lesson.packId());
    if (pack.isGood()) {
      MeasureAsked measure = pack.value().measure();
      typed.put("gauge", Show.upTo(measure.gaugeMm() / unit.inBase(), 2));
      typed.put("rest", Show.upTo(measure.restSeconds(), 0));
      typed.put("hold", Show.upTo(measure.holdSeconds(), 0));
      typed.put("fold", measure.fold().key());
      typed.put("pull", measure.pull().key());
      if (measure.loadG() != null) {
        typed.put("load", Show.upTo(measure.loadG(), 1));
      }
    }
    return typed;
  }

  /**
   * The lesson for which a student was asked for a reading of a cloth along a grain and has not
   * made all of them; null when none asks for it.
   */
  public static @Nullable UUID lessonOf(
      Book book, UUID classId, UUID studentId, UUID clothId, Grain grain) {
    return book.readingPlans().of(classId, studentId).stream()
        .filter(each -> !each.isDone() && each.planned().grain() == grain)
        .filter(each -> clothId.equals(each.planned().clothId()))
        .map(each -> each.planned().lessonId())
        .findFirst()
        .orElse(null);
  }
}
