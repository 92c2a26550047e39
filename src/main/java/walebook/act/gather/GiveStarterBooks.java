package walebook.act.gather;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import walebook.book.Book;
import walebook.book.BookFiles;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** Writes each student of a class a small book of their own to log in. */
public final class GiveStarterBooks {
  private static final String ENDING = ".walebook";

  private final Book book;
  private final BookFiles files;
  private final Clock clock;

  public GiveStarterBooks(Book book, BookFiles files, Clock clock) {
    this.book = book;
    this.files = files;
    this.clock = clock;
  }

  /**
   * Writes the books.
   *
   * @param names true to call the files by names, false by aliases
   * @param replace true when a person said that files there may be replaced
   * @return the files; refused, with nothing written, when one is there or the folder can't be made
   */
  public Answer<List<Path>> give(SchoolClass to, Path folder, boolean names, boolean replace) {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      return Answer.bad(
          Problem.refuse(
              "gather.no-folder", new Place.Path(folder.toString()), folder.toString(), ""));
    }
    Map<Path, Student> planned = new LinkedHashMap<>();
    for (Student each : book.enrolments().studentsOf(to.id())) {
      String called = plain(names ? each.name() : each.alias());
      Path file = folder.resolve(called + ENDING);
      if (called.isEmpty() || planned.containsKey(file)) {
        file = folder.resolve(called + "-" + plain(each.alias()) + planned.size() + ENDING);
      }
      planned.put(file, each);
    }
    List<Problem> there = new ArrayList<>();
    for (Path each : planned.keySet()) {
      if (Files.exists(each) && !replace) {
        there.add(Problem.refuse("book.exists", new Place.Path(each.toString()), "", ""));
      }
    }
    if (!there.isEmpty()) {
      return Answer.bad(there);
    }
    planned.forEach(
        (file, student) ->
            files.starter(
                book.file(),
                file,
                to.name() + ", " + student.alias(),
                to.id(),
                student.id(),
                clock));
    return Answer.good(List.copyOf(planned.keySet()));
  }

  private static String plain(String name) {
    return name.strip()
        .replaceAll("[^\\p{L}\\p{M}\\p{N}]+", "-")
        .replaceAll("^-|-$", "")
        .toLowerCase(Locale.ROOT);
  }
}
