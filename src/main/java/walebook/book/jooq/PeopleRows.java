package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.SCHOOL_CLASS;
import static walebook.book.jooq.made.Tables.STUDENT;
import static walebook.book.jooq.made.Tables.TERM;
import static walebook.book.jooq.made.Tables.TUTOR;

import java.text.Collator;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import walebook.book.Shelf;
import walebook.book.jooq.made.tables.records.SchoolClassRecord;
import walebook.book.jooq.made.tables.records.StudentRecord;
import walebook.book.jooq.made.tables.records.TermRecord;
import walebook.book.jooq.made.tables.records.TutorRecord;
import walebook.record.Keyed;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.Term;
import walebook.record.Tier;
import walebook.record.Tutor;

/** Students, tutors, terms and classes as rows. */
final class PeopleRows {
  private static final Collator ALPHABET = Collator.getInstance(Locale.ROOT);

  /** By name as people sort names, accents and all; SQLite would put them after Z. */
  static final Comparator<Student> BY_NAME =
      Comparator.comparing(Student::name, ALPHABET).thenComparing(Student::id);

  private PeopleRows() {}

  static Shelf<Student> students(Access access) {
    return new JooqShelf<>(
        access, STUDENT, List.of(STUDENT.NAME, STUDENT.ID), PeopleRows::row, PeopleRows::student);
  }

  static Shelf<Tutor> tutors(Access access) {
    return new JooqShelf<>(
        access,
        TUTOR,
        List.of(TUTOR.NAME, TUTOR.ID),
        PeopleRows::row,
        row -> new Tutor(row.getId(), row.getName(), Rows.stamp(row)));
  }

  static Shelf<Term> terms(Access access) {
    return new JooqShelf<>(
        access, TERM, List.of(TERM.STARTS_ON, TERM.ID), PeopleRows::row, PeopleRows::term);
  }

  static Shelf<SchoolClass> classes(Access access) {
    return new JooqShelf<>(
        access,
        SCHOOL_CLASS,
        List.of(SCHOOL_CLASS.NAME, SCHOOL_CLASS.ID),
        PeopleRows::row,
        PeopleRows::schoolClass);
  }

  static Student student(StudentRecord row) {
    return new Student(
        row.getId(),
        row.getName(),
        row.getAlias(),
        Keyed.of(Tier.class, row.getTier()),
        Rows.stamp(row));
  }

  private static StudentRecord row(Student student) {
    StudentRecord row = Rows.stamped(new StudentRecord(), student.id(), student.stamp());
    row.setName(student.name());
    row.setAlias(student.alias());
    row.setTier(student.tier().key());
    return row;
  }

  private static TutorRecord row(Tutor tutor) {
    TutorRecord row = Rows.stamped(new TutorRecord(), tutor.id(), tutor.stamp());
    row.setName(tutor.name());
    return row;
  }

  private static Term term(TermRecord row) {
    return new Term(
        row.getId(), row.getName(), row.getStartsOn(), row.getEndsOn(), Rows.stamp(row));
  }

  private static TermRecord row(Term term) {
    TermRecord row = Rows.stamped(new TermRecord(), term.id(), term.stamp());
    row.setName(term.name());
    row.setStartsOn(term.startsOn());
    row.setEndsOn(term.endsOn());
    return row;
  }

  private static SchoolClass schoolClass(SchoolClassRecord row) {
    return new SchoolClass(
        row.getId(),
        row.getTermId(),
        row.getTutorId(),
        row.getName(),
        row.getMeets(),
        Rows.stamp(row));
  }

  private static SchoolClassRecord row(SchoolClass each) {
    SchoolClassRecord row = Rows.stamped(new SchoolClassRecord(), each.id(), each.stamp());
    row.setTermId(each.termId());
    row.setTutorId(each.tutorId());
    row.setName(each.name());
    row.setMeets(each.meets());
    return row;
  }
}
