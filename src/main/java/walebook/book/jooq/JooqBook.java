package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.BOOK_INFO;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.function.Supplier;
import walebook.book.Assessments;
import walebook.book.Bin;
import walebook.book.Book;
import walebook.book.BookTrouble;
import walebook.book.ClothLog;
import walebook.book.Drafts;
import walebook.book.Enrolments;
import walebook.book.Garments;
import walebook.book.History;
import walebook.book.KitPrices;
import walebook.book.Lessons;
import walebook.book.Marks;
import walebook.book.Notes;
import walebook.book.PackShelf;
import walebook.book.Photos;
import walebook.book.Pieces;
import walebook.book.Privacy;
import walebook.book.ReadingPlans;
import walebook.book.Results;
import walebook.book.Shelf;
import walebook.book.gather.Gathering;
import walebook.book.sqlite.Backups;
import walebook.record.BookInfo;
import walebook.record.Cloth;
import walebook.record.Machine;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.Term;
import walebook.record.Tutor;

/** A book whose rows are read and written through jOOQ. */
public final class JooqBook implements Book {
  private final Path file;
  private final Access access;
  private final AutoCloseable lock;
  private final Clock clock;

  private JooqBook(Path file, Access access, AutoCloseable lock, Clock clock) {
    this.file = file;
    this.access = access;
    this.lock = lock;
    this.clock = clock;
  }

  /**
   * Takes over a file that was checked and migrated.
   *
   * @param lock let go when the book is closed
   */
  public static JooqBook over(Path file, AutoCloseable lock, Clock clock) throws SQLException {
    return new JooqBook(file, new Access(file, clock), lock, clock);
  }

  /** Writes the one row that says what the book is called. */
  public void begin(BookInfo info) {
    access.insert(BookRows.row(info));
  }

  @Override
  public Path file() {
    return file;
  }

  @Override
  public BookInfo info() {
    return access.read(dsl -> BookRows.info(dsl.selectFrom(BOOK_INFO).fetchSingle()));
  }

  @Override
  public void keep(BookInfo info) {
    access.update(BookRows.row(info));
  }

  @Override
  public Shelf<Student> students() {
    return PeopleRows.students(access);
  }

  @Override
  public Shelf<Tutor> tutors() {
    return PeopleRows.tutors(access);
  }

  @Override
  public Shelf<Term> terms() {
    return PeopleRows.terms(access);
  }

  @Override
  public Shelf<SchoolClass> classes() {
    return PeopleRows.classes(access);
  }

  @Override
  public Enrolments enrolments() {
    return new JooqEnrolments(access, clock);
  }

  @Override
  public Shelf<Machine> machines() {
    return new MachineShelf(access);
  }

  @Override
  public Shelf<Cloth> cloths() {
    return ClothRows.cloths(access);
  }

  @Override
  public ClothLog clothLog() {
    return new JooqClothLog(access);
  }

  @Override
  public Lessons lessons() {
    return new JooqLessons(access, clock);
  }

  @Override
  public ReadingPlans readingPlans() {
    return new JooqReadingPlans(access);
  }

  @Override
  public PackShelf packShelf() {
    return new JooqPackShelf(access, clock);
  }

  @Override
  public KitPrices kitPrices() {
    return new JooqKitPrices(access, clock);
  }

  @Override
  public Pieces pieces() {
    return new JooqPieces(access);
  }

  @Override
  public Results results() {
    return new JooqResults(access);
  }

  @Override
  public Marks marks() {
    return new JooqMarks(access, clock);
  }

  @Override
  public History history() {
    return new JooqHistory(access, clock);
  }

  @Override
  public Bin bin() {
    return new JooqBin(access, clock);
  }

  @Override
  public Privacy privacy() {
    return new JooqPrivacy(access, clock);
  }

  @Override
  public Photos photos() {
    return new JooqPhotos(access);
  }

  @Override
  public Notes notes() {
    return new JooqNotes(access);
  }

  @Override
  public Drafts drafts() {
    return new JooqDrafts(access, clock);
  }

  @Override
  public Garments garments() {
    return new JooqGarments(access, clock);
  }

  @Override
  public Assessments assessments() {
    return new JooqAssessments(access, clock);
  }

  @Override
  public Gathering gathering() {
    return new JooqGathering(access, file, clock);
  }

  @Override
  public <T> T inOneStep(Supplier<T> steps) {
    return access.inTransaction(steps);
  }

  @Override
  public void copyTo(Path copy) {
    try {
      Backups.copy(file, copy);
    } catch (IOException | SQLException e) {
      throw new BookTrouble("unknown", String.valueOf(e.getMessage()), e);
    }
  }

  @Override
  public void close() {
    access.close();
    try {
      lock.close();
    } catch (Exception e) {
      throw new BookTrouble("unknown", String.valueOf(e.getMessage()), e);
    }
  }
}
