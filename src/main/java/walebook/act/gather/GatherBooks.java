package walebook.act.gather;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.BookFiles;
import walebook.book.gather.FromBook;
import walebook.book.gather.GatherProgress;
import walebook.book.gather.SourceBook;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;

/** Takes students' books into this one, after a copy of it was made. */
public final class GatherBooks {
  private static final String ENDING = ".walebook";

  private final Book book;
  private final BookFiles files;
  private final Clock clock;

  public GatherBooks(Book book, BookFiles files, Clock clock) {
    this.book = book;
    this.files = files;
    this.clock = clock;
  }

  /**
   * What came of a gathering.
   *
   * @param backup the copy of this book from before; null for a trial and when nothing came
   */
  public record Gathered(List<FromBook> books, @Nullable Path backup) {}

  /**
   * Gathers in one go: all is in the book afterwards, or nothing.
   *
   * @param picked books, or folders whose books are meant
   * @param really false for a trial that changes nothing
   * @throws java.util.concurrent.CancellationException from the progress; nothing has changed then
   */
  public Gathered gather(List<Path> picked, boolean really, By by, GatherProgress progress)
      throws IOException {
    Path scratch = Files.createTempDirectory("walebook-gather");
    try {
      Map<Path, Answer<SourceBook>> all = new LinkedHashMap<>();
      List<Path> books = booksOf(picked);
      for (Path each : books) {
        progress.at(0, each);
        Path own = Files.createDirectory(scratch.resolve(Integer.toString(all.size())));
        all.put(each, isThis(each) ? thisOne(each) : files.borrow(each, own));
      }
      List<SourceBook> good =
          all.values().stream().filter(Answer::isGood).map(Answer::value).toList();
      Path backup =
          really && !good.isEmpty() ? files.backUpBeforeGathering(book.file(), clock) : null;
      List<FromBook> came = book.gathering().gather(good, really, by, progress);
      return new Gathered(inOrder(all, came), backup);
    } finally {
      delete(scratch);
    }
  }

  private boolean isThis(Path file) throws IOException {
    return Files.exists(file) && Files.isSameFile(file, book.file());
  }

  private static Answer<SourceBook> thisOne(Path file) {
    return Answer.bad(Problem.refuse("gather.itself", new Place.Path(file.toString()), "", ""));
  }

  private static List<FromBook> inOrder(Map<Path, Answer<SourceBook>> all, List<FromBook> came) {
    List<FromBook> results = new ArrayList<>();
    all.forEach(
        (file, answer) ->
            results.add(
                answer.isGood()
                    ? came.stream()
                        .filter(each -> each.file().equals(file))
                        .findFirst()
                        .orElseThrow()
                    : FromBook.refused(file, "", answer.problems().get(0))));
    return results;
  }

  private static List<Path> booksOf(List<Path> picked) throws IOException {
    LinkedHashSet<Path> books = new LinkedHashSet<>();
    for (Path each : picked) {
      if (!Files.isDirectory(each)) {
        books.add(each);
        continue;
      }
      try (Stream<Path> inside = Files.list(each)) {
        inside
            .filter(file -> file.toString().toLowerCase(Locale.ROOT).endsWith(ENDING))
            .filter(Files::isRegularFile)
            .sorted()
            .forEach(books::add);
      }
    }
    return List.copyOf(books);
  }

  private static void delete(Path folder) throws IOException {
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes a) throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path done, @Nullable IOException e)
              throws IOException {
            Files.delete(done);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
