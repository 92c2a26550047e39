package walebook.book.sqlite.gather;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import walebook.book.sqlite.Migrations;

/**
 * A small book for one student out of the tutor's: the class, the room's machines and cloths with
 * their readings, the lessons with their packs, and the student's own plan and pieces. Of others it
 * has an alias only, and only where a record names them. It carries the version of each record, so
 * that gathering knows the common ancestor.
 */
public final class StarterBook {
  private final Path tutorsBook;
  private final Clock clock;

  public StarterBook(Path tutorsBook, Clock clock) {
    this.tutorsBook = tutorsBook;
    this.clock = clock;
  }

  /** Writes it; the file appears whole or not at all, in the place of one that is there. */
  public void write(Path file, UUID bookId, String name, UUID classId, UUID studentId)
      throws SQLException, IOException {
    Path half = file.resolveSibling(file.getFileName() + ".part");
    clear(half);
    try {
      Migrations.apply(half);
      try (Link link = new Link(half)) {
        link.attach(tutorsBook, "tutors");
        link.run("CREATE TEMP TABLE give (entity TEXT, id TEXT, PRIMARY KEY (entity, id))");
        link.run("BEGIN IMMEDIATE");
        choose(link, classId.toString(), studentId.toString());
        NewIds ids = new NewIds(clock.millis());
        link.run(
            "INSERT INTO book_info (id, name, is_invented, length_unit, created_at, changed_at)"
                + " SELECT ?, ?, is_invented, length_unit, ?, ? FROM tutors.book_info",
            bookId.toString(),
            name,
            ids.now(),
            ids.now());
        for (Kind kind : Kind.ALL) {
          copy(link, kind, studentId.toString());
        }
        ancestors(link, ids);
        link.run("COMMIT");
      }
      Files.move(half, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      clear(half);
    }
  }

  private static void clear(Path half) throws IOException {
    for (String end : List.of("", "-wal", "-shm", "-journal")) {
      Files.deleteIfExists(half.resolveSibling(half.getFileName() + end));
    }
  }

  private static void choose(Link link, String of, String me) throws SQLException {
    give(link, "school_class", "SELECT id FROM tutors.school_class WHERE id = ?", of);
    give(link, "term", "SELECT term_id FROM tutors.school_class WHERE id = ?", of);
    give(
        link,
        "tutor",
        "SELECT tutor_id FROM tutors.school_class WHERE id = ? AND tutor_id IS NOT NULL",
        of);
    give(link, "student", "SELECT ?", me);
    give(
        link,
        "class_student",
        "SELECT id FROM tutors.class_student WHERE class_id = ? AND student_id = ?",
        of,
        me);
    give(link, "machine", "SELECT id FROM tutors.machine");
    // A dial may have been measured in another term, which then comes along by its name.
    give(link, "term", "SELECT term_id FROM tutors.machine_dial WHERE term_id IS NOT NULL");
    give(link, "cloth", "SELECT id FROM tutors.cloth");
    give(link, "lesson", "SELECT id FROM tutors.lesson WHERE class_id = ?", of);
    give(link, "pack", "SELECT pack_id FROM tutors.lesson WHERE class_id = ?", of);
    give(link, "pack", "SELECT pack_id FROM tutors.shelved_pack");
    give(link, "shelved_pack", "SELECT id FROM tutors.shelved_pack");
    give(
        link,
        "cloth_reading",
        "SELECT id FROM tutors.cloth_reading WHERE (class_id IS NULL OR class_id = ?)"
            + " AND (lesson_id IS NULL OR lesson_id IN (SELECT id FROM temp.give))",
        of);
    give(link, "cloth_wash", "SELECT id FROM tutors.cloth_wash");
    chooseMine(link, of, me);
    chooseAssessed(link, of, me);
    chooseOthers(link);
  }

  /** What the course asks for, and how the student's own pieces were looked over. */
  private static void chooseAssessed(Link link, String of, String me) throws SQLException {
    give(link, "criterion", "SELECT id FROM tutors.criterion WHERE class_id = ?", of);
    give(
        link,
        "criterion_tag",
        "SELECT id FROM tutors.criterion_tag WHERE criterion_id IN (SELECT id FROM temp.give)"
            + " AND (lesson_id IN (SELECT id FROM temp.give)"
            + " OR piece_id IN (SELECT id FROM temp.give))");
    for (String entity : List.of("piece_check", "feedback")) {
      give(
          link,
          entity,
          "SELECT a.id FROM tutors."
              + entity
              + " a JOIN tutors.test_piece p ON p.id = a.piece_id WHERE p.student_id = ?"
              + " AND p.id IN (SELECT id FROM temp.give)",
          me);
    }
  }

  private static void chooseMine(Link link, String of, String me) throws SQLException {
    give(
        link,
        "planned_piece",
        "SELECT id FROM tutors.planned_piece WHERE student_id = ? AND lesson_id IN"
            + " (SELECT id FROM temp.give WHERE entity = 'lesson')",
        me);
    give(
        link,
        "planned_reading",
        "SELECT id FROM tutors.planned_reading WHERE student_id = ? AND lesson_id IN"
            + " (SELECT id FROM temp.give WHERE entity = 'lesson')",
        me);
    // A piece brings the ones it was sewn again from, and the plans that those were sewn for.
    give(
        link,
        "test_piece",
        "WITH RECURSIVE mine(id, parent_id) AS (SELECT id, parent_id FROM tutors.test_piece WHERE"
            + " class_id = ? AND student_id = ? UNION SELECT t.id, t.parent_id FROM mine JOIN"
            + " tutors.test_piece t ON t.id = mine.parent_id WHERE t.class_id = ?)"
            + " SELECT id FROM mine",
        of,
        me,
        of);
    give(
        link,
        "planned_piece",
        "SELECT planned_id FROM tutors.test_piece WHERE planned_id IS NOT NULL AND id IN"
            + " (SELECT id FROM temp.give WHERE entity = 'test_piece')");
    give(
        link,
        "value_mark",
        "SELECT id FROM tutors.value_mark WHERE piece_id IN (SELECT id FROM temp.give) OR"
            + " reading_id IN (SELECT id FROM temp.give)");
  }

  /** People whom a record names; only their aliases go along. */
  private static void chooseOthers(Link link) throws SQLException {
    for (String each :
        List.of(
            "measured_by FROM tutors.cloth_reading",
            "measured_by FROM tutors.test_piece",
            "student_id FROM tutors.test_piece",
            "student_id FROM tutors.planned_piece")) {
      String column = each.substring(0, each.indexOf(' '));
      give(
          link,
          "student",
          "SELECT "
              + each
              + " WHERE "
              + column
              + " IS NOT NULL AND id IN (SELECT id FROM temp.give)");
    }
  }

  private static void give(Link link, String entity, String select, Object... values)
      throws SQLException {
    link.run(
        "INSERT OR IGNORE INTO temp.give SELECT '" + entity + "', * FROM (" + select + ")", values);
  }

  private static void copy(Link link, Kind kind, String me) throws SQLException {
    boolean people = kind.table().equals("student");
    String values =
        link.columns(kind.table()).stream()
            .map(
                column ->
                    people && column.equals("name")
                        ? "CASE WHEN s.id = '" + me + "' THEN s.name ELSE s.alias END"
                        : "s." + column)
            .collect(Collectors.joining(", "));
    link.run(
        "INSERT INTO main."
            + kind.table()
            + " SELECT "
            + values
            + " FROM tutors."
            + kind.table()
            + " s WHERE s.id IN (SELECT id FROM temp.give WHERE entity = ?)",
        kind.table());
    for (Kind.Part part : kind.parts()) {
      if (part.via() == null) {
        link.run(
            "INSERT INTO main."
                + part.table()
                + " SELECT q.* FROM tutors."
                + part.table()
                + " q WHERE q."
                + part.owner()
                + " IN (SELECT id FROM temp.give WHERE entity = ?)",
            kind.table());
      }
    }
  }

  private static void ancestors(Link link, NewIds ids) throws SQLException {
    String source = link.must("SELECT " + ids.sql());
    link.run(
        "INSERT INTO gathered_book SELECT ?, id, name, name, ?, ?, ?, 1 FROM tutors.book_info",
        source,
        ids.now(),
        ids.now(),
        ids.now());
    for (Kind kind : Kind.ALL) {
      link.run(
          "INSERT INTO gathered_row (id, source_id, entity, row_id, our_id, their_version,"
              + " their_changed_at, our_version, our_changed_at, is_born, created_at, changed_at)"
              + " SELECT "
              + ids.sql()
              + ", ?, ?, id, id, row_version, changed_at, row_version,"
              + " changed_at, 0, ?, ? FROM main."
              + kind.table(),
          source,
          kind.table(),
          ids.now(),
          ids.now());
    }
  }
}
