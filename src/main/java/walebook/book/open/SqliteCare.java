package walebook.book.open;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.book.BookCare;
import walebook.book.BookCopy;
import walebook.book.BookDifference;
import walebook.book.RescueNames;
import walebook.book.RescueReport;
import walebook.book.sqlite.Backups;
import walebook.book.sqlite.BookCheck;
import walebook.book.sqlite.Differences;
import walebook.book.sqlite.Rescue;
import walebook.book.sqlite.Restore;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Copies, going back and rescue of books that are SQLite files. */
public final class SqliteCare implements BookCare {

  private interface Work<T> {
    Answer<T> run() throws SQLException, IOException;
  }

  @Override
  public Answer<List<BookCopy>> copies(Path book) {
    return named(book, "book.copies-unreadable", () -> Answer.good(Backups.list(book)));
  }

  @Override
  public Answer<BookCopy> backUp(Path book, BookCopy.Why why, @Nullable Path beside, Clock clock) {
    if (!Files.isRegularFile(book)) {
      return refuse("book.gone", book, "");
    }
    Answer<BookCopy> made =
        named(book, "book.no-copy", () -> Answer.good(Backups.make(book, clock, why)));
    if (!made.isGood() || beside == null) {
      return made;
    }
    try {
      Backups.alsoInto(beside, book, made.value(), clock);
      return made;
    } catch (IOException e) {
      Problem missing =
          Problem.ask("book.no-second-copy", new Place.Path(beside.toString()), Reason.of(e), "");
      return new Answer.Good<>(made.value(), List.of(missing));
    }
  }

  @Override
  public Answer<Long> pieces(Path copy) {
    return named(copy, "book.copy-damaged", () -> Answer.good(Differences.pieces(copy)));
  }

  @Override
  public boolean changedSinceCopy(Path book) {
    try {
      return Backups.changed(book);
    } catch (IOException e) {
      // Then making the copy will say what is in the way.
      return true;
    }
  }

  @Override
  public Answer<BookDifference> difference(Path book, Path copy) {
    return copyFits(copy)
        .flatMap(
            fits ->
                named(
                    copy, "book.copy-damaged", () -> Answer.good(Differences.between(book, copy))));
  }

  @Override
  public Answer<Path> restore(Path book, Path copy, Clock clock) {
    return copyFits(copy)
        .flatMap(
            fits ->
                locked(
                    book,
                    () ->
                        named(
                            book,
                            "book.not-restored",
                            () -> Answer.good(Restore.run(book, copy, clock)))));
  }

  /** Only a whole book of a shape that we know is gone back to. */
  private static Answer<Path> copyFits(Path copy) {
    if (!Files.isRegularFile(copy)) {
      return refuse("book.missing", copy, "");
    }
    return named(
        copy,
        "book.copy-damaged",
        () -> {
          BookCheck.Finding found = BookCheck.of(copy);
          return switch (found.kind()) {
            case WHOLE -> Answer.good(copy);
            case NEWER -> refuse("book.newer", copy, String.valueOf(found.shape()));
            case OTHER_PROGRAM -> refuse("book.other-program", copy, "");
            case DAMAGED -> refuse("book.copy-damaged", copy, "");
          };
        });
  }

  @Override
  public Answer<RescueReport> rescue(Path damaged, Path into, RescueNames names, Clock clock) {
    if (!Files.isRegularFile(damaged)) {
      return refuse("book.missing", damaged, "");
    }
    if (Files.exists(into)) {
      return refuse("book.exists", into, "");
    }
    Path folder = into.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      return refuse("book.no-folder", into, String.valueOf(folder));
    }
    return locked(
        damaged,
        () ->
            named(
                damaged,
                "book.not-rescued",
                () -> {
                  RescueReport report = Rescue.run(damaged, into, names, clock);
                  return report == null
                      ? refuse("book.nothing-to-rescue", damaged, "")
                      : Answer.good(report);
                }));
  }

  private interface Locked<T> {
    Answer<T> run();
  }

  private static <T> Answer<T> locked(Path book, Locked<T> work) {
    try (BookLock lock = BookLock.take(book)) {
      return lock == null ? refuse("book.open-elsewhere", book, "") : work.run();
    } catch (IOException e) {
      return refuse("book.folder-read-only", book, Reason.of(e));
    }
  }

  private static <T> Answer<T> named(Path file, String code, Work<T> work) {
    try {
      return work.run();
    } catch (SQLException | IOException e) {
      return refuse(code, file, Reason.of(e));
    }
  }

  private static <T> Answer<T> refuse(String code, Path file, String found) {
    return Answer.bad(Problem.refuse(code, new Place.Path(file.toString()), found, ""));
  }
}
