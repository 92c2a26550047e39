package walebook.act.bring;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import walebook.act.bring.match.BringField;
import walebook.act.note.KeepNote;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.ClassNote;
import walebook.record.Note;
import walebook.record.PieceCode;
import walebook.record.Stamp;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.record.Tutor;
import walebook.words.Words;

/** Notes about pieces, cloths and lessons, one a row. */
final class NoteKind implements LogKind<Note> {
  private final Book book;
  private final Clock clock;
  private final UUID classId;
  private final LogTable table;
  private final Words words;

  /** The book's own that no row was yet. */
  private final List<Note> left;

  NoteKind(Book book, Clock clock, UUID classId, LogTable table, Words words) {
    this.book = book;
    this.clock = clock;
    this.classId = classId;
    this.table = table;
    this.words = words;
    this.left = new ArrayList<>(there());
  }

  @Override
  public String about(CellReader cells) {
    return cells.text(BringField.NOTE_WHICH);
  }

  @Override
  public Answer<Note> read(CellReader cells) {
    Note.About about = kind(cells);
    UUID which = about == null ? null : which(cells, about);
    String body = cells.text(KeepNote.BODY);
    if (body.isEmpty()) {
      refuse(cells, KeepNote.BODY, "field.needed", "");
    }
    Stamp stamp = stamp(cells);
    if (about == null || which == null || body.isEmpty()) {
      return Answer.bad(cells.problems());
    }
    return Answer.good(
        new Note(Ids.next(), about, which, author(cells, about, which, body), body, stamp));
  }

  /** Saved first on the day that the row says, at its beginning; now where it says none. */
  private Stamp stamp(CellReader cells) {
    Instant now = clock.instant();
    String day = cells.text(BringField.NOTE_WRITTEN);
    if (day.isEmpty()) {
      return Stamp.fresh(now);
    }
    LocalDate today = LocalDate.now(clock);
    LocalDate written = LocalDate.parse(day);
    if (written.isAfter(today)) {
      refuse(cells, BringField.NOTE_WRITTEN, "date.future", today.toString());
    }
    return new Stamp(written.atStartOfDay(clock.getZone()).toInstant(), now, 1);
  }

  private Note.@Nullable About kind(CellReader cells) {
    String typed = cells.text(BringField.NOTE_ABOUT).toLowerCase(Locale.ROOT);
    String piece = words.say("sheet.notes.of-piece");
    String cloth = words.say("sheet.notes.of-cloth");
    String lesson = words.say("sheet.notes.of-lesson");
    if (typed.equals(piece.toLowerCase(Locale.ROOT)) || typed.equals("piece")) {
      return Note.About.PIECE;
    } else if (typed.equals(cloth.toLowerCase(Locale.ROOT))) {
      return Note.About.CLOTH;
    } else if (typed.equals(lesson.toLowerCase(Locale.ROOT))) {
      return Note.About.LESSON;
    }
    refuse(cells, BringField.NOTE_ABOUT, "choice.unknown", piece + "; " + cloth + "; " + lesson);
    return null;
  }

  private @Nullable UUID which(CellReader cells, Note.About about) {
    if (about == Note.About.CLOTH) {
      return table.cloth(cells, BringField.NOTE_WHICH);
    }
    String typed = cells.text(BringField.NOTE_WHICH);
    if (about == Note.About.LESSON) {
      UUID lesson = table.lessons().find(typed, "");
      if (lesson == null) {
        Place place = cells.place(BringField.NOTE_WHICH);
        Problem none = Problem.refuse("bring.note-lesson", place, typed, "");
        cells.problems().add(table.lessons().notFound(typed, place, none));
      }
      return lesson;
    }
    TestPiece piece = book.pieces().byCode(PieceCode.bare(typed));
    if (piece == null || !piece.whose().classId().equals(classId)) {
      refuse(cells, BringField.NOTE_WHICH, "bring.note-piece", "");
      return null;
    }
    return piece.id();
  }

  /** Who wrote it: as the book's own note has it where the row is that note. */
  private String author(CellReader cells, Note.About about, UUID which, String body) {
    String typed = cells.text(KeepNote.FROM);
    String writer = writer(typed);
    List<Note> alike =
        left.stream()
            .filter(each -> each.about() == about && each.aboutId().equals(which))
            .filter(each -> table.covered(each.body()).equals(table.covered(body)))
            .toList();
    Note same = first(alike, each -> each.author().equals(writer));
    if (same == null) {
      String plain = PieceTable.plain(typed);
      same = first(alike, each -> PieceTable.plain(table.standIn(each.author())).equals(plain));
    }
    if (same == null) {
      return writer;
    }
    left.remove(same);
    return same.author();
  }

  private static @Nullable Note first(List<Note> notes, Predicate<Note> is) {
    return notes.stream().filter(is).findFirst().orElse(null);
  }

  /** A student's code stands for the student, the tutor's word for a book's only tutor. */
  private String writer(String typed) {
    Student student = typed.isEmpty() ? null : table.student(typed);
    boolean isCode =
        student != null && PieceTable.plain(student.alias()).equals(PieceTable.plain(typed));
    if (student != null && isCode) {
      return student.name();
    }
    List<Tutor> tutors = book.tutors().all();
    String tutorWord = PieceTable.plain(words.say("sheet.tutor-word"));
    return tutors.size() == 1 && PieceTable.plain(typed).equals(tutorWord)
        ? tutors.get(0).name()
        : typed;
  }

  private static void refuse(CellReader cells, String field, String code, String wanted) {
    cells.problems().add(Problem.refuse(code, cells.place(field), cells.text(field), wanted));
  }

  @Override
  public List<Note> there() {
    return book.notes().ofClass(classId).stream().map(ClassNote::note).toList();
  }

  @Override
  public Object likeness(Note found) {
    return List.of(found.about(), found.aboutId(), found.author(), table.covered(found.body()));
  }

  @Override
  public void save(Note found) {
    book.notes().add(found);
  }
}
