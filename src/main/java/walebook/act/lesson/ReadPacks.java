package walebook.act.lesson;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.lesson.LessonPack;
import walebook.lesson.ReadPack;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.record.TaughtPack;

/** Reads the packs that can be taken up: those of the program, then those on the book's shelf. */
public final class ReadPacks {
  private final Book book;
  private final ReadPack reader;

  public ReadPacks(Book book, ReadPack reader) {
    this.book = book;
    this.reader = reader;
  }

  /**
   * A pack that can be taken up.
   *
   * @param shelfId its key in the book; null for a pack of the program
   * @param since when the book met it; null for a pack of the program
   * @param versions how many packs here have its name, itself among them
   */
  public record Found(
      LessonPack pack, @Nullable UUID shelfId, @Nullable Instant since, int versions) {
    public boolean ofProgram() {
      return shelfId == null;
    }

    /** The version by content, short enough to be read out: the hash's first eight digits. */
    public String content() {
      return pack.files().contentHash().substring(0, 8);
    }
  }

  /** A pack on the shelf that this program can't read. */
  public record Unread(TaughtPack pack, List<Problem> problems) {
    public Unread {
      problems = List.copyOf(problems);
    }
  }

  /** All of them. */
  public record Packs(List<Found> found, List<Unread> unread) {
    public Packs {
      found = List.copyOf(found);
      unread = List.copyOf(unread);
    }
  }

  /** Those of the program alone. */
  public static Packs ofProgram() {
    return new Packs(
        ReadLessons.packs().stream().map(each -> new Found(each, null, null, 1)).toList(),
        List.of());
  }

  /** Those of the program, then those on the shelf. */
  public Packs all() {
    List<LessonPack> packs = new ArrayList<>(ReadLessons.packs());
    List<@Nullable TaughtPack> kept = new ArrayList<>();
    packs.forEach(each -> kept.add(null));
    List<Unread> unread = new ArrayList<>();
    ReadTaught taught = new ReadTaught(book, reader);
    for (TaughtPack each : book.packShelf().all()) {
      Answer<LessonPack> pack = taught.pack(each.id());
      if (pack.isGood()) {
        packs.add(pack.value());
        kept.add(each);
      } else {
        unread.add(new Unread(each, pack.problems()));
      }
    }
    List<Found> found = new ArrayList<>();
    for (int i = 0; i < packs.size(); i++) {
      LessonPack pack = packs.get(i);
      TaughtPack row = kept.get(i);
      int versions =
          (int)
              packs.stream()
                  .filter(each -> each.about().name().equals(pack.about().name()))
                  .count();
      found.add(
          new Found(
              pack,
              row == null ? null : row.id(),
              row == null ? null : row.stamp().created(),
              versions));
    }
    return new Packs(found, unread);
  }
}
