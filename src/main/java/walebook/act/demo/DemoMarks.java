package walebook.act.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.book.PieceFilter;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.CriterionTag;
import walebook.record.Feedback;
import walebook.record.Help;
import walebook.record.Marking;
import walebook.record.Method;
import walebook.record.PieceCheck;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.Stamp;
import walebook.record.TestPiece;
import walebook.record.Tier;

/**
 * What the demo's course asks for, all of it invented, and how the tutor and the students looked
 * over some of the pieces. It draws from a source of its own, so that the pieces stay as they are.
 */
final class DemoMarks {
  private static final List<String> CRITERIA =
      List.of(
          "1.1",
          "Chooses a stitch that stretches as far as the cloth",
          "1.2",
          "Sets width, length and needle to suit the cloth, and says why",
          "2.1",
          "Measures stretch and recovery along both grains",
          "2.2",
          "Keeps a record from which somebody else can sew the piece again",
          "3.1",
          "Finishes a hem that lies flat and still stretches",
          "3.2",
          "Explains what went wrong and what to change next");

  /** Those of them that only some of the marks count for. */
  private static final Map<String, Set<Marking>> LOOKS_AT =
      Map.of(
          "2.2", Set.of(Marking.REASONING),
          "3.1", Set.of(Marking.TECHNIQUE, Marking.PERFORMANCE, Marking.FINISH),
          "3.2", Set.of(Marking.REASONING));

  private static final List<String> BANK =
      List.of(
          "Even feed and a straight seam. Next: a wider zigzag on this cloth.",
          "Well measured both ways. Next: let it rest longer before you read the growth.",
          "The stitch holds. Next: lower the foot’s pressure, and the edge will lie flat.",
          "It gave early, and you said why: that is what a test piece is for.",
          "Clear notes; anybody could sew this again.");

  /** The tutor has come as far as this evening with checking; the last are still to come. */
  private static final int CHECKED_WEEKS = 4;

  private static final int MINUTE = 112;
  private static final double SAID = 0.4;

  private final Book book;
  private final DemoRoom room;
  private final List<DemoLessons.Taught> taught;
  private final Chance chance;

  DemoMarks(Book book, DemoRoom room, List<DemoLessons.Taught> taught, long seed) {
    this.book = book;
    this.room = room;
    this.taught = taught;
    this.chance = new Chance(~seed);
  }

  void save() {
    List<Criterion> criteria = criteria();
    tag(criteria.get(0), 1);
    tag(criteria.get(1), 3);
    tag(criteria.get(2), 4);
    List<TestPiece> pieces =
        book.pieces().list(PieceFilter.ALL).stream()
            .sorted(
                Comparator.comparing((TestPiece each) -> each.whose().sewnOn())
                    .thenComparing(TestPiece::code))
            .toList();
    for (DemoStudent student : DemoStudent.ALL) {
      UUID id = room.row(student).id();
      student(
          student,
          pieces.stream().filter(each -> each.whose().studentId().equals(id)).toList(),
          criteria);
    }
    BANK.forEach(book.assessments()::bank);
  }

  private List<Criterion> criteria() {
    List<Criterion> criteria = new ArrayList<>();
    for (int i = 0; i < CRITERIA.size(); i += 2) {
      Criterion each =
          new Criterion(
              Ids.next(),
              room.schoolClass().id(),
              CRITERIA.get(i),
              CRITERIA.get(i + 1),
              i / 2 + 1,
              LOOKS_AT.getOrDefault(CRITERIA.get(i), Criterion.ALL),
              Evening.ALL.get(0).stamp(0));
      book.assessments().keep(each);
      criteria.add(each);
    }
    return criteria;
  }

  private void tag(Criterion criterion, int week) {
    UUID lesson = taught.get(week).lesson().id();
    book.assessments().tag(CriterionTag.onLesson(criterion.id(), lesson));
  }

  /** A piece of each lesson, a hem and a second attempt, as far as there are any. */
  private void student(DemoStudent student, List<TestPiece> own, List<Criterion> criteria) {
    for (DemoLessons.Taught lesson : taught) {
      first(own, each -> lesson.lesson().id().equals(each.whose().lessonId()))
          .ifPresent(piece -> look(student, piece, lesson.evening()));
    }
    first(own, each -> each.setting().method() == Method.HEM)
        .ifPresent(piece -> speaks(student, piece, criteria.get(4)));
    first(own, each -> each.parent() != null)
        .ifPresent(piece -> speaks(student, piece, criteria.get(5)));
    first(own, each -> !each.seen().remark().isEmpty() || each.seen().grade() != null)
        .ifPresent(piece -> speaks(student, piece, criteria.get(3)));
  }

  private static Optional<TestPiece> first(List<TestPiece> of, Predicate<TestPiece> which) {
    return of.stream().filter(which).findFirst();
  }

  private void speaks(DemoStudent student, TestPiece piece, Criterion criterion) {
    book.assessments().tag(CriterionTag.onPiece(criterion.id(), piece.id()));
    look(student, piece, evening(piece));
  }

  private Evening evening(TestPiece piece) {
    return Evening.ALL.stream()
        .filter(each -> !each.date().isBefore(piece.whose().sewnOn()))
        .findFirst()
        .orElse(Evening.ALL.get(Evening.ALL.size() - 1));
  }

  private void look(DemoStudent student, TestPiece piece, Evening evening) {
    if (book.assessments().check(piece.id(), CheckedBy.SELF) != null) {
      return;
    }
    Map<Marking, Integer> tutor = marks(student, piece, evening);
    check(piece, CheckedBy.SELF, bySelf(tutor), help(student), evening);
    if (evening.week() <= CHECKED_WEEKS && chance.happens(0.9)) {
      check(piece, CheckedBy.TUTOR, tutor, help(student), evening);
      if (chance.happens(SAID)) {
        say(piece, tutor, evening);
      }
    }
  }

  private Map<Marking, Integer> marks(DemoStudent student, TestPiece piece, Evening evening) {
    Integer grade = piece.seen().grade();
    int look = grade == null ? 2 : Math.max(0, Math.min(3, grade - 1));
    int held = performance(piece);
    Double edge = piece.measure().edgeChangePercent();
    double waves = edge == null ? 0 : Math.abs(edge);
    Map<Marking, Integer> marks = new EnumMap<>(Marking.class);
    marks.put(Marking.CHOICE, held > 0 ? 3 : 2);
    marks.put(Marking.TECHNIQUE, look);
    marks.put(Marking.PERFORMANCE, held);
    marks.put(Marking.FINISH, waves > 6 ? 1 : waves > 3 ? 2 : 3);
    boolean explains = chance.happens(0.6 + 0.4 * student.skillIn(evening.week()));
    marks.put(Marking.REASONING, explains ? 2 + (chance.happens(0.5) ? 1 : 0) : 1);
    return marks;
  }

  private static int performance(TestPiece piece) {
    PullReading pull = piece.measure().counting();
    Double stretch = piece.measure().seamStretchPercent();
    if (pull == null || stretch == null) {
      return 2;
    }
    return pull.end() == SeamEnd.HELD ? 3 : stretch >= 40 ? 2 : stretch >= 25 ? 1 : 0;
  }

  /** Most mark themselves as the tutor does, some a little better or worse. */
  private Map<Marking, Integer> bySelf(Map<Marking, Integer> tutor) {
    Map<Marking, Integer> self = new EnumMap<>(Marking.class);
    for (Marking each : Marking.values()) {
      int off = chance.happens(0.3) ? chance.happens(0.6) ? 1 : -1 : 0;
      self.put(each, Math.max(0, Math.min(Marking.MOST, tutor.getOrDefault(each, 2) + off)));
    }
    return self;
  }

  private Help help(DemoStudent student) {
    if (student.tier() == Tier.CORE) {
      return chance.happens(0.4) ? Help.HANDS_ON : Help.PROMPTED;
    }
    return chance.happens(0.7) ? Help.NONE : Help.PROMPTED;
  }

  private void check(
      TestPiece piece, CheckedBy by, Map<Marking, Integer> marks, Help help, Evening evening) {
    Stamp stamp = evening.stamp(MINUTE);
    book.assessments()
        .keep(new PieceCheck(Ids.next(), piece.id(), by, marks, help, evening.date(), stamp));
  }

  private void say(TestPiece piece, Map<Marking, Integer> marks, Evening evening) {
    int held = marks.getOrDefault(Marking.PERFORMANCE, 2);
    int finish = marks.getOrDefault(Marking.FINISH, 2);
    String says = BANK.get(held < Marking.PASS ? 3 : finish < 3 ? 2 : chance.happens(0.5) ? 0 : 4);
    book.assessments()
        .add(
            new Feedback(
                Ids.next(),
                piece.id(),
                evening.date(),
                says,
                DemoStudent.TUTOR,
                evening.stamp(MINUTE)));
  }
}
