package walebook.act.lesson;

import java.time.Clock;
import java.util.UUID;
import walebook.book.Book;
import walebook.lesson.LessonPack;
import walebook.record.Stamp;

/** Puts a pack from outside the program on the book's shelf, whole, so that it travels with it. */
public final class AddPack {
  private final Book book;
  private final Clock clock;

  public AddPack(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /** What came of it. */
  public enum Came {
    /** It is on the shelf now, and no other pack has its name. */
    NEW,
    /** It is on the shelf now, beside a pack of the same name and another content. */
    OTHER_VERSION,
    /** The program or the shelf had this very content already; nothing was added. */
    KNOWN
  }

  /** Adds a pack that was read and found good. */
  public Came add(LessonPack pack) {
    String hash = pack.files().contentHash();
    boolean named = false;
    for (LessonPack each : ReadLessons.packs()) {
      if (each.files().contentHash().equals(hash)) {
        return Came.KNOWN;
      }
      named |= each.about().name().equals(pack.about().name());
    }
    boolean ofProgram = named;
    return book.inOneStep(
        () -> {
          boolean other =
              ofProgram
                  || book.packShelf().all().stream()
                      .anyMatch(
                          each ->
                              each.name().equals(pack.about().name())
                                  && !each.contentHash().equals(hash));
          UUID id = KeepPack.in(book, pack, Stamp.fresh(clock.instant()));
          if (book.packShelf().has(id)) {
            return Came.KNOWN;
          }
          book.packShelf().put(id);
          return other ? Came.OTHER_VERSION : Came.NEW;
        });
  }
}
