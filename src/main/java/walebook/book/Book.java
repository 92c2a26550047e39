package walebook.book;

import java.nio.file.Path;
import java.util.function.Supplier;
import walebook.book.gather.Gathering;
import walebook.record.BookInfo;
import walebook.record.Cloth;
import walebook.record.Machine;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.Term;
import walebook.record.Tutor;

/**
 * An open book. Every method may wait for the disk: never call one on the window's thread. A write
 * that returned is on the disk and survives the end of the process.
 *
 * <p>Unexpected trouble with the file comes as {@link BookTrouble}.
 */
public interface Book extends AutoCloseable {
  /** The file that this book is. */
  Path file();

  BookInfo info();

  /** Saves a changed name or unit. */
  void keep(BookInfo info);

  Shelf<Student> students();

  Shelf<Tutor> tutors();

  Shelf<Term> terms();

  Shelf<SchoolClass> classes();

  Enrolments enrolments();

  Shelf<Machine> machines();

  Shelf<Cloth> cloths();

  ClothLog clothLog();

  Lessons lessons();

  ReadingPlans readingPlans();

  PackShelf packShelf();

  KitPrices kitPrices();

  Pieces pieces();

  /** The pieces again, cut down to what comparisons need. */
  Results results();

  Marks marks();

  History history();

  Bin bin();

  Privacy privacy();

  Photos photos();

  Notes notes();

  Drafts drafts();

  Garments garments();

  Assessments assessments();

  /** Taking other books' records into this one. Never inside {@link #inOneStep}. */
  Gathering gathering();

  /**
   * Runs several steps as one: all are saved or none. What is read inside sees what was written
   * inside. Never ask a person anything in there.
   */
  <T> T inOneStep(Supplier<T> steps);

  /** Copies the book as it is now into a new file, whole, while it stays open. */
  void copyTo(Path file);

  /** Waits for what is being saved, then lets go of the file. */
  @Override
  void close();
}
