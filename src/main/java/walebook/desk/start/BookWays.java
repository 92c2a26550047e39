package walebook.desk.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import walebook.act.book.MakeDemoBook;
import walebook.act.book.RescueBook;
import walebook.act.book.RestoreBackup;
import walebook.book.Book;
import walebook.book.BookFiles;
import walebook.book.RescueReport;
import walebook.book.open.SqliteCare;
import walebook.desk.welcome.Ways;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.words.Words;

/** The ways into a book, on this machine's files. */
final class BookWays implements Ways {
  private final BookFiles files;
  private final KeptSettings settings;
  private final Words words;
  private final Clock clock;
  private final Path demoFolder;

  BookWays(BookFiles files, KeptSettings settings, Words words, Clock clock, Path demoFolder) {
    this.files = files;
    this.settings = settings;
    this.words = words;
    this.clock = clock;
    this.demoFolder = demoFolder;
  }

  @Override
  public List<Path> recent() {
    return settings.recentBooks();
  }

  @Override
  public Answer<Book> makeBook(Path file, String name) {
    // A new book has nothing to take back yet, least of all its name.
    return files
        .make(file, name, false, Unit.MM, clock)
        .map(
            book -> {
              book.history().beginHere();
              return book;
            });
  }

  @Override
  public Answer<Book> openBook(Path file) {
    return files.open(file, clock);
  }

  @Override
  public Answer<Book> openDemo() {
    Path file = demoFolder.resolve(MakeDemoBook.FILE);
    try {
      Files.createDirectories(demoFolder);
    } catch (IOException e) {
      return Answer.bad(
          Problem.refuse(
              "book.folder-read-only",
              new Place.Path(file.toString()),
              String.valueOf(e.getMessage()),
              ""));
    }
    return new MakeDemoBook(files, clock).openOrMake(file);
  }

  @Override
  public Answer<RescueReport> rescue(Path damaged) {
    String name = String.valueOf(damaged.getFileName()).replaceFirst("\\.walebook$", "");
    Path into = damaged.resolveSibling(name + "-rescued.walebook");
    for (int next = 2; Files.exists(into); next++) {
      into = damaged.resolveSibling(name + "-rescued-" + next + ".walebook");
    }
    return new RescueBook(new SqliteCare(), words, clock).into(damaged, into);
  }

  @Override
  public Answer<Book> goBack(Path file, Path copy) {
    return new RestoreBackup(new SqliteCare(), clock)
        .to(file, copy)
        .flatMap(before -> files.open(file, clock));
  }
}
