package walebook.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.record.ClassNote;
import walebook.record.Cloth;
import walebook.record.ClothReading;
import walebook.record.Note;
import walebook.record.PieceCode;
import walebook.record.ReadingLine;

/** Reads what was measured, planned and noted beside the pieces of a class. */
final class GatherLog {
  private final Book book;
  private final UUID classId;
  private final TermChoice choice;
  private final Map<UUID, Cloth> cloths = new HashMap<>();
  private final Map<UUID, String> lessons;
  private final WithoutNames without;

  private GatherLog(
      Book book, UUID classId, TermChoice choice, List<ClothLine> cloths, String tutorWord) {
    this.book = book;
    this.classId = classId;
    this.choice = choice;
    cloths.forEach(each -> this.cloths.put(each.cloth().id(), each.cloth()));
    this.lessons = new HashMap<>(LessonTitles.of(book.lessons().of(classId)));
    this.lessons.keySet().removeIf(each -> !choice.hasLesson(each));
    this.without = WithoutNames.of(book, tutorWord);
  }

  /**
   * What there is beside the pieces.
   *
   * @param readings every one of the book
   * @param cloths those that go out
   */
  static TermLog of(
      Book book,
      UUID classId,
      TermChoice choice,
      List<ClothReading> readings,
      List<ClothLine> cloths,
      String tutorWord) {
    GatherLog gather = new GatherLog(book, classId, choice, cloths, tutorWord);
    return new TermLog(
        readings.stream().filter(gather::isChosen).toList(),
        gather.washes(cloths),
        gather.planned(),
        gather.notes());
  }

  private boolean isChosen(ClothReading reading) {
    return classId.equals(reading.classId())
        && cloths.containsKey(reading.clothId())
        && choice.hasReading(reading);
  }

  private List<WashLine> washes(List<ClothLine> lines) {
    Set<Cloth> once = new LinkedHashSet<>();
    lines.forEach(each -> once.add(each.cloth()));
    List<WashLine> washes = new ArrayList<>();
    for (Cloth cloth : once) {
      book.clothLog().washesOf(cloth.id()).forEach(each -> washes.add(new WashLine(cloth, each)));
    }
    return washes;
  }

  private List<ReadingPlanLine> planned() {
    List<ReadingPlanLine> lines = new ArrayList<>();
    for (ReadingLine each : book.readingPlans().ofClass(classId)) {
      String lesson = lessons.get(each.planned().lessonId());
      if (lesson != null && choice.hasStudent(each.planned().studentId())) {
        lines.add(new ReadingPlanLine(lesson, each));
      }
    }
    return lines;
  }

  private List<NoteLine> notes() {
    List<NoteLine> lines = new ArrayList<>();
    for (ClassNote each : book.notes().ofClass(classId)) {
      Note note = each.note();
      ClassNote.Of piece = each.piece();
      String which = which(note, piece);
      if (which != null) {
        UUID student = piece == null ? null : piece.studentId();
        lines.add(new NoteLine(note, which, student, author(note)));
      }
    }
    return lines;
  }

  /** Null for what does not go out. */
  private @Nullable String which(Note note, ClassNote.@Nullable Of piece) {
    if (piece != null) {
      boolean chosen = choice.hasStudent(piece.studentId()) && choice.hasLesson(piece.lessonId());
      return chosen ? PieceCode.spoken(piece.code()) : null;
    }
    Cloth cloth = cloths.get(note.aboutId());
    return cloth == null ? lessons.get(note.aboutId()) : cloth.name();
  }

  private String author(Note note) {
    return choice.names() ? note.author() : without.person(note.author());
  }
}
