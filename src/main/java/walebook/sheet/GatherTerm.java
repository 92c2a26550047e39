package walebook.sheet;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.compare.ClassProgress;
import walebook.compare.ClothStretch;
import walebook.compare.CompareBySetting;
import walebook.compare.Comparison;
import walebook.compare.Names;
import walebook.record.Cloth;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.Lesson;
import walebook.record.Parent;
import walebook.record.PlannedPiece;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.TestPiece;

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

  /** The facts of a class, or null when the book has no such class. */
  public @Nullable TermFacts of(UUID classId, boolean names) {
    SchoolClass found = book.classes().find(classId);
    return found == null ? null : book.inOneStep(() -> gather(found, names));
  }

  private TermFacts gather(SchoolClass of, boolean names) {
    Names shown = Names.of(book, !names);
    List<TestPiece> pieces = sorted(book.pieces().list(PieceFilter.ALL.ofClass(of.id())), shown);
    List<ClothReading> readings = book.clothLog().allReadings();
    Map<UUID, Map<Grain, ClothStretch>> stretches = ClothStretch.of(readings);
    Comparison comparison = CompareBySetting.of(pieces, CompareBySetting.USUAL, stretches, shown);
    UUID tutorId = of.tutorId();
    return new TermFacts(
        book.info(),
        of,
        book.terms().find(of.termId()),
        names && tutorId != null ? book.tutors().find(tutorId) : null,
        names,
        book.enrolments().everyoneOf(of.id()),
        pieces,
        lookup(of.id(), pieces, shown, stretches),
        comparison,
        progress(of.id(), names),
        cloths(pieces, readings, stretches),
        cover(names),
        LocalDateTime.now(clock).withNano(0));
  }

  private static List<TestPiece> sorted(List<TestPiece> pieces, Names shown) {
    return pieces.stream()
        .sorted(
            Comparator.comparing((TestPiece each) -> each.whose().sewnOn())
                .thenComparing(each -> shown.of(each.whose().studentId()))
                .thenComparing(TestPiece::code))
        .toList();
  }

  private PieceLookup lookup(
      UUID classId,
      List<TestPiece> pieces,
      Names shown,
      Map<UUID, Map<Grain, ClothStretch>> stretches) {
    List<Lesson> lessons = book.lessons().of(classId);
    Map<UUID, PlannedPiece> planned = new HashMap<>();
    for (Lesson lesson : lessons) {
      book.lessons().planOf(lesson.id()).forEach(each -> planned.put(each.id(), each));
    }
    Map<UUID, String> titles =
        lessons.stream().collect(Collectors.toMap(Lesson::id, Lesson::title));
    return new PieceLookup(
        shown, titles, planned, codes(pieces), stretches, faults, clock.getZone());
  }

  /** A parent may have been sewn in another class. */
  private Map<UUID, String> codes(List<TestPiece> pieces) {
    Map<UUID, String> codes = new HashMap<>();
    pieces.forEach(each -> codes.put(each.id(), each.code()));
    for (TestPiece each : pieces) {
      Parent parent = each.parent();
      if (parent != null && !codes.containsKey(parent.pieceId())) {
        TestPiece found = book.pieces().find(parent.pieceId());
        if (found != null) {
          codes.put(found.id(), found.code());
        }
      }
    }
    return codes;
  }

  /** By name when names go out; by alias otherwise, since the order of names would tell them. */
  private ClassProgress progress(UUID classId, boolean names) {
    ClassProgress read = ClassProgress.of(book, classId);
    if (names) {
      return read;
    }
    return new ClassProgress(
        read.lessons(),
        read.rows().stream().sorted(Comparator.comparing(row -> row.student().alias())).toList());
  }

  private List<ClothLine> cloths(
      List<TestPiece> pieces,
      List<ClothReading> readings,
      Map<UUID, Map<Grain, ClothStretch>> stretches) {
    Set<UUID> used =
        pieces.stream().map(each -> each.cloth().clothId()).collect(Collectors.toSet());
    Map<UUID, List<ClothReading>> byCloth =
        readings.stream().collect(Collectors.groupingBy(ClothReading::clothId));
    List<ClothLine> lines = new ArrayList<>();
    for (Cloth cloth : book.cloths().all()) {
      if (!cloth.retired() || used.contains(cloth.id())) {
        lines.addAll(
            ClothLine.of(
                cloth,
                byCloth.getOrDefault(cloth.id(), List.of()),
                stretches.getOrDefault(cloth.id(), Map.of())));
      }
    }
    return lines;
  }

  private UnaryOperator<String> cover(boolean names) {
    Map<String, String> instead = new HashMap<>();
    if (!names) {
      book.tutors().all().forEach(each -> instead.put(each.name(), tutorWord));
      for (Student each : book.students().all()) {
        instead.put(each.name(), each.alias());
      }
    }
    return NameCover.of(instead);
  }
}
