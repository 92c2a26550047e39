package walebook.sheet;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.PieceOrder;
import walebook.book.ResultFilter;
import walebook.compare.ClassProgress;
import walebook.compare.Names;
import walebook.compare.RosterOrder;
import walebook.compare.assessed.AssessedClass;
import walebook.record.Cloth;
import walebook.record.ClothReading;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.Tutor;

/** Reads what the workbook of a class needs from the book, all as it was at one moment. */
public final class GatherTerm {
  private final Book book;
  private final Clock clock;
  private final Map<String, String> faults;
  private final String tutorWord;

  /**
   * Sets it up.
   *
   * @param faults plain names of faults by key
   * @param tutorWord what stands for a tutor's name where names are not wanted
   */
  public GatherTerm(Book book, Clock clock, Map<String, String> faults, String tutorWord) {
    this.book = book;
    this.clock = clock;
    this.faults = Map.copyOf(faults);
    this.tutorWord = tutorWord;
  }

  /**
   * The facts of a class, or null when the book has no such class.
   *
   * @param extras worked out in the same step
   */
  public @Nullable TermFacts of(UUID classId, TermChoice choice, Supplier<TermExtras> extras) {
    SchoolClass found = book.classes().find(classId);
    return found == null ? null : book.inOneStep(() -> gather(found, choice, extras));
  }

  /** The class's pieces and what they come to. */
  private record Found(TermScan scan, TermFindings findings) {}

  /** The pieces are looked at on a thread of its own, since all else can be read meanwhile. */
  private TermFacts gather(SchoolClass of, TermChoice choice, Supplier<TermExtras> extras) {
    Names shown = Names.of(book, !choice.names());
    List<ClothReading> readings = book.clothLog().allReadings();
    try (Ahead<Found> looking =
        new Ahead<>(() -> List.of(found(of.id(), choice, readings, shown)).iterator())) {
      TermExtras said = extras.get();
      PieceOrder order = TermScan.order(book, ResultFilter.ALL.ofClass(of.id()), choice);
      return facts(of, choice, said, shown, readings, order, looking.next());
    }
  }

  private Found found(UUID classId, TermChoice choice, List<ClothReading> readings, Names shown) {
    TermScan scan = TermScan.of(book, classId, choice, TermFindings.setAside(book));
    return new Found(scan, TermFindings.of(book, scan, readings, shown, classId));
  }

  private TermFacts facts(
      SchoolClass of,
      TermChoice choice,
      TermExtras extras,
      Names shown,
      List<ClothReading> readings,
      PieceOrder order,
      Found found) {
    TermScan scan = found.scan();
    TermFindings findings = found.findings();
    AssessedClass assessed =
        AssessedClass.of(book, of.id(), scan.lookedOver())
            .only(choice.studentIds(), choice.lessonIds());
    ParentCodes parents = new ParentCodes(book);
    UUID tutorId = of.tutorId();
    Set<UUID> used = new HashSet<>(scan.cloths());
    readings.stream()
        .filter(each -> of.id().equals(each.classId()) && choice.hasLesson(each.lessonId()))
        .forEach(each -> used.add(each.clothId()));
    List<ClothLine> cloths = cloths(used, readings, findings);
    return new TermFacts(
        book.info(),
        of,
        book.terms().find(of.termId()),
        choice.names() && tutorId != null ? book.tutors().find(tutorId) : null,
        choice,
        students(of.id(), choice),
        scan.tally().perStudent(),
        new PieceRun(() -> order, parents),
        lookup(of.id(), choice, parents, shown, findings),
        findings,
        progress(of.id(), choice, scan.logged()),
        assessed,
        scan.coverage().of(assessed.students()),
        cloths,
        plan(of.id(), choice, scan.planned()),
        GatherLog.of(book, of.id(), choice, readings, cloths, tutorWord),
        extras,
        student ->
            new PieceRun(
                () ->
                    TermScan.order(
                        book, ResultFilter.ALL.ofClass(of.id()).ofStudent(student), choice),
                parents),
        piece -> book.photos().ofPiece(piece),
        everyName(),
        cover(choice.names()),
        LocalDateTime.now(clock).withNano(0));
  }

  private List<Student> students(UUID classId, TermChoice choice) {
    return book.enrolments().everyoneOf(classId).stream()
        .filter(each -> choice.hasStudent(each.id()))
        .sorted(RosterOrder.of(choice.names()))
        .toList();
  }

  private PieceLookup lookup(
      UUID classId, TermChoice choice, ParentCodes parents, Names shown, TermFindings findings) {
    List<Lesson> lessons = book.lessons().of(classId);
    Map<UUID, PlannedPiece> planned = new HashMap<>();
    for (Lesson lesson : lessons) {
      if (choice.hasLesson(lesson.id())) {
        book.lessons().planOf(lesson.id()).forEach(each -> planned.put(each.id(), each));
      }
    }
    return new PieceLookup(
        shown,
        LessonTitles.of(lessons),
        planned,
        parents,
        findings.stretches(),
        findings.odd()::of,
        faults,
        clock.getZone());
  }

  private List<PlanLine> plan(UUID classId, TermChoice choice, Set<UUID> logged) {
    List<PlanLine> lines = new ArrayList<>();
    List<Lesson> lessons = book.lessons().of(classId);
    Map<UUID, String> titles = LessonTitles.of(lessons);
    for (Lesson lesson : lessons) {
      String title = titles.getOrDefault(lesson.id(), lesson.title());
      if (choice.hasLesson(lesson.id())) {
        book.lessons().planOf(lesson.id()).stream()
            .filter(each -> choice.hasStudent(each.studentId()))
            .forEach(each -> lines.add(new PlanLine(title, each, logged.contains(each.id()))));
      }
    }
    return lines;
  }

  private ClassProgress progress(UUID classId, TermChoice choice, ClassProgress.Logged logged) {
    ClassProgress read = ClassProgress.of(book, classId, choice.lessonIds(), logged);
    List<ClassProgress.Row> rows =
        read.rows().stream().filter(row -> choice.hasStudent(row.student().id())).toList();
    return new ClassProgress(
        read.lessons(),
        rows.stream()
            .sorted(
                Comparator.comparing(ClassProgress.Row::student, RosterOrder.of(choice.names())))
            .toList());
  }

  private List<ClothLine> cloths(
      Set<UUID> used, List<ClothReading> readings, TermFindings findings) {
    Map<UUID, List<ClothReading>> byCloth =
        readings.stream().collect(Collectors.groupingBy(ClothReading::clothId));
    List<ClothLine> found = new ArrayList<>();
    for (Cloth cloth : book.cloths().all()) {
      if (!cloth.retired() || used.contains(cloth.id())) {
        found.addAll(
            ClothLine.of(
                cloth,
                byCloth.getOrDefault(cloth.id(), List.of()),
                findings.readingsAside(),
                findings.stretches().getOrDefault(cloth.id(), Map.of())));
      }
    }
    return found;
  }

  private Set<String> everyName() {
    return Stream.concat(
            book.students().all().stream().map(Student::name),
            book.tutors().all().stream().map(Tutor::name))
        .collect(Collectors.toSet());
  }

  private UnaryOperator<String> cover(boolean names) {
    return names ? UnaryOperator.identity() : WithoutNames.of(book, tutorWord).cover();
  }
}
