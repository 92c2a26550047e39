package walebook.act.card;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.ReadTaught;
import walebook.act.piece.LoadPieceRoom;
import walebook.act.piece.PieceRoom;
import walebook.act.piece.StartPiece;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.lesson.LessonPack;
import walebook.lesson.LogField;
import walebook.lesson.ReadPack;
import walebook.problem.Answer;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.tables.SharedTables;

/** Reads a lesson's record cards: one for each planned piece, with what the book has of it. */
public final class LoadCards {
  private final Book book;
  private final SharedTables tables;

  public LoadCards(Book book, SharedTables tables) {
    this.book = book;
    this.tables = tables;
  }

  /** The cards, or null when the book has no such lesson. */
  public @Nullable CardSheet of(UUID lessonId) {
    Lesson lesson = book.lessons().find(lessonId);
    if (lesson == null) {
      return null;
    }
    PieceRoom room = LoadPieceRoom.of(book, tables, lesson.classId());
    List<PlannedPiece> plan = book.lessons().planOf(lessonId);
    int readings = plan.stream().mapToInt(each -> each.asked().readings()).max().orElse(1);
    return new CardSheet(
        lesson,
        room,
        CardColumns.of(log(lesson), readings),
        cards(lesson, plan, room),
        new KeepCards(book).find(lessonId));
  }

  /** A card for a piece that was sewn beside the plan, begun like the student's last piece. */
  public Card free(Lesson lesson, UUID studentId, String key, PieceRoom room) {
    return new Card(
        key,
        new StartPiece(book).fresh(lesson.classId(), studentId, lesson.id(), room),
        null,
        Map.of());
  }

  /** The lesson that was taught last until a day, or null. */
  public @Nullable UUID latest(UUID classId, java.time.LocalDate until) {
    List<Lesson> begun =
        book.lessons().of(classId).stream()
            .filter(each -> !each.taughtOn().isAfter(until))
            .toList();
    return begun.isEmpty() ? null : begun.get(begun.size() - 1).id();
  }

  private List<LogField> log(Lesson lesson) {
    Answer<LessonPack> pack = new ReadTaught(book, new ReadPack()).pack(lesson.packId());
    return pack.isGood() ? pack.value().log() : List.of();
  }

  private List<Card> cards(Lesson lesson, List<PlannedPiece> plan, PieceRoom room) {
    Map<UUID, TestPiece> logged = new HashMap<>();
    for (TestPiece each : book.pieces().list(PieceFilter.ALL.ofClass(lesson.classId()))) {
      UUID planned = each.whose().plannedId();
      if (planned != null) {
        logged.put(planned, each);
      }
    }
    StartPiece start = new StartPiece(book);
    List<Card> cards = new ArrayList<>();
    for (Student student : room.students()) {
      for (PlannedPiece each : plan) {
        if (each.studentId().equals(student.id())) {
          TestPiece sewn = logged.get(each.id());
          cards.add(
              new Card(
                  each.id().toString(),
                  start.fromPlan(each, lesson.classId(), room),
                  each,
                  sewn == null ? Map.of() : LoggedText.of(sewn, room)));
        }
      }
    }
    return cards;
  }
}
