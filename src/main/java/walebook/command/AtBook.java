package walebook.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import walebook.book.Book;
import walebook.book.open.SqliteFiles;

/** Work on an open book, closed again whatever comes of it. */
interface AtBook {
  Exit run(Typed typed, Terminal terminal, Book book);

  /** Opens the book of {@code --book} around the work. */
  static Job.Work open(AtBook work) {
    return (typed, terminal) -> {
      Path file = path("book", typed.text("book", ""));
      try (Book book =
          Refused.unless(new SqliteFiles().open(file, terminal.clock()), Exit.NO_BOOK)) {
        return work.run(typed, terminal, book);
      }
    };
  }

  /** A path as typed. */
  static Path path(String option, String typed) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException e) {
      throw Refused.field(option, "path.not-a-path", typed, "");
    }
  }
}
