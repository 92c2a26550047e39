package walebook.act.lesson;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.compare.Names;
import walebook.lesson.BuiltInPacks;
import walebook.lesson.LessonPack;
import walebook.lesson.PackSource;
import walebook.lesson.PiecesPlan;
import walebook.lesson.PlanFairness;
import walebook.lesson.ReadPack;
import walebook.problem.Answer;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.ReadingLine;
import walebook.record.Student;

/** Reads the packs there are, the lessons a class took up, and who is to sew what. */
public final class ReadLessons {
  private final Book book;

  public ReadLessons(Book book) {
    this.book = book;
  }

  /**
   * A lesson that the class took up.
   *
   * @param planned how many pieces, or readings, its plan asks for
   * @param logged how many of them are logged
   * @param own how many other pieces were logged for it
   * @param measured true when its plan is of readings
   */
  public record Taken(Lesson lesson, int planned, int logged, int own, boolean measured) {}

  /**
   * One student's part of a plan.
   *
   * @param name or alias where names are hidden
   * @param pieces in the student's order
   * @param readings what they are to measure, in their order, with what is measured
   */
  public record Part(String name, List<PlannedPiece> pieces, List<ReadingLine> readings) {
    public Part {
      pieces = List.copyOf(pieces);
      readings = List.copyOf(readings);
    }
  }

  /**
   * A lesson's plan.
   *
   * @param done keys of the planned pieces that are logged
   * @param names of cloths
   * @param fairness null when there is nothing to sew or the lesson's pack can't be read any more
   */
  public record ClassPlan(
      Lesson lesson,
      List<Part> parts,
      Set<UUID> done,
      Names names,
      @Nullable PlanFairness fairness) {
    public ClassPlan {
      parts = List.copyOf(parts);
      done = Set.copyOf(done);
    }

    /** Whether anybody is to sew. */
    public boolean isSewn() {
      return parts.stream().anyMatch(each -> !each.pieces().isEmpty());
    }

    /** Whether anybody is to measure cloth. */
    public boolean isMeasured() {
      return parts.stream().anyMatch(each -> !each.readings().isEmpty());
    }
  }

  /** The packs that come with the program. */
  public static List<LessonPack> packs() {
    ReadPack read = new ReadPack();
    List<LessonPack> packs = new ArrayList<>();
    for (PackSource source : BuiltInPacks.all()) {
      Answer<LessonPack> pack = read.read(source);
      if (pack.isGood()) {
        packs.add(pack.value());
      }
    }
    return packs;
  }

  /** The class's lessons, first to last. */
  public List<Taken> taken(UUID classId) {
    Set<UUID> done = done(classId);
    List<Taken> all = new ArrayList<>();
    for (Lesson lesson : book.lessons().of(classId)) {
      // What a student's garment asks for stands with the lesson, but the lesson didn't deal it.
      List<PlannedPiece> plan =
          book.lessons().planOf(lesson.id()).stream().filter(each -> !each.isForGarment()).toList();
      int logged = (int) plan.stream().filter(each -> done.contains(each.id())).count();
      List<ReadingLine> readings = book.readingPlans().of(lesson.id());
      int asked = readings.stream().mapToInt(each -> each.planned().repeats()).sum();
      int measured = readings.stream().mapToInt(ReadingLine::done).sum();
      int sewn = book.pieces().count(PieceFilter.ALL.ofClass(classId).ofLesson(lesson.id()));
      all.add(
          new Taken(
              lesson,
              plan.size() + asked,
              logged + measured,
              sewn - logged,
              plan.isEmpty() && asked > 0));
    }
    return all;
  }

  /** Who is to sew or measure what in a lesson, or null when the book has no such lesson. */
  public @Nullable ClassPlan plan(UUID lessonId, boolean namesHidden) {
    Lesson lesson = book.lessons().find(lessonId);
    if (lesson == null) {
      return null;
    }
    Map<UUID, List<PlannedPiece>> byStudent = new HashMap<>();
    for (PlannedPiece each : book.lessons().planOf(lessonId)) {
      byStudent.computeIfAbsent(each.studentId(), id -> new ArrayList<>()).add(each);
    }
    Map<UUID, List<ReadingLine>> readings =
        book.readingPlans().of(lessonId).stream()
            .collect(Collectors.groupingBy(each -> each.planned().studentId()));
    List<Part> parts = new ArrayList<>();
    for (Student student : book.enrolments().everyoneOf(lesson.classId())) {
      List<PlannedPiece> pieces = byStudent.getOrDefault(student.id(), List.of());
      List<ReadingLine> toMeasure = readings.getOrDefault(student.id(), List.of());
      if (!pieces.isEmpty() || !toMeasure.isEmpty()) {
        parts.add(new Part(namesHidden ? student.alias() : student.name(), pieces, toMeasure));
      }
    }
    return new ClassPlan(
        lesson,
        parts,
        new HashSet<>(done(lesson.classId())),
        Names.of(book, namesHidden),
        fairness(lesson, parts));
  }

  private @Nullable PlanFairness fairness(Lesson lesson, List<Part> parts) {
    Answer<LessonPack> pack = new ReadTaught(book, new ReadPack()).pack(lesson.packId());
    if (parts.isEmpty() || !pack.isGood() || !(pack.value().plan() instanceof PiecesPlan plan)) {
      return null;
    }
    List<List<String>> hands =
        parts.stream()
            .filter(part -> !part.pieces().isEmpty())
            .map(part -> part.pieces().stream().map(PlannedPiece::cell).toList())
            .toList();
    return hands.isEmpty()
        ? null
        : PlanFairness.of(plan.cells().stream().map(PiecesPlan.Cell::label).toList(), hands);
  }

  private Set<UUID> done(UUID classId) {
    return book.pieces().list(PieceFilter.ALL.ofClass(classId)).stream()
        .map(each -> each.whose().plannedId())
        .filter(Objects::nonNull)
        .collect(Collectors.toSet());
  }
}
