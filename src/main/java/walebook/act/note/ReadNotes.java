package walebook.act.note;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import walebook.book.Book;
import walebook.record.Note;
import walebook.record.Student;
import walebook.sheet.NameCover;
import walebook.words.Words;

/** Reads notes as they may be shown. */
public final class ReadNotes {
  private final Book book;
  private final Words words;

  public ReadNotes(Book book, Words words) {
    this.book = book;
    this.words = words;
  }

  /**
   * A note as shown.
   *
   * @param from who wrote it; empty when nobody said
   * @param says its words
   */
  public record Line(Note note, String from, String says) {}

  /**
   * Notes about a thing, oldest first.
   *
   * @param namesHidden true to cover full names, in the words as well; students' codes stand there
   */
  public List<Line> about(NotePlace place, boolean namesHidden) {
    UnaryOperator<String> cover = namesHidden ? cover() : UnaryOperator.identity();
    return book.notes().about(place.about(), place.id()).stream()
        .map(each -> new Line(each, cover.apply(each.author()), cover.apply(each.body())))
        .toList();
  }

  private UnaryOperator<String> cover() {
    String tutorWord = words.say("sheet.tutor-word");
    Map<String, String> instead = new HashMap<>();
    book.tutors().all().forEach(each -> instead.put(each.name(), tutorWord));
    for (Student each : book.students().all()) {
      instead.put(each.name(), each.alias());
    }
    return NameCover.of(instead);
  }
}
