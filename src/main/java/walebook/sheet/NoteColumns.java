package walebook.sheet;

import java.util.List;
import walebook.record.Note;
import walebook.words.Words;

/** The columns of the notes: a row is one note. */
final class NoteColumns {
  private NoteColumns() {}

  static List<Column<NoteLine>> of(PieceLookup lookup, Words words) {
    return List.of(
        Column.words(
            "about",
            "sheet.notes.about",
            "sheet.notes.about.says",
            Origin.TYPED,
            line -> words.say(about(line.note().about()))),
        Column.text(
            "which",
            "sheet.notes.which",
            "sheet.notes.which.says",
            Origin.CALLED,
            Format.TITLE,
            NoteLine::which),
        Column.text(
            "student",
            "sheet.notes.student",
            "sheet.notes.student.says",
            Origin.PERSON,
            Format.TEXT,
            line -> lookup.name(line.studentId())),
        Column.of(
            "written",
            "sheet.notes.written",
            "",
            "sheet.notes.written.says",
            Origin.SAVED,
            Format.MOMENT,
            line -> new Value.Moment(lookup.local(line.note().stamp().created()))),
        Column.text(
            "author",
            "sheet.notes.author",
            "sheet.notes.author.says",
            Origin.AUTHOR,
            Format.TEXT,
            NoteLine::author),
        Column.text(
            "words",
            "sheet.notes.words",
            "sheet.notes.words.says",
            Origin.REMARK,
            Format.LONG_TEXT,
            line -> line.note().body()));
  }

  private static String about(Note.About about) {
    return switch (about) {
      case PIECE -> "sheet.notes.of-piece";
      case CLOTH -> "sheet.notes.of-cloth";
      case LESSON -> "sheet.notes.of-lesson";
      case STUDENT -> throw new IllegalArgumentException("notes about students stay in the book");
    };
  }
}
