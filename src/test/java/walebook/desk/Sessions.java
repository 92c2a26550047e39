package walebook.desk;

import java.nio.file.Path;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteCare;
import walebook.desk.common.BackupsViewModel;
import walebook.desk.common.PickFile;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.record.SchoolClass;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Sessions on a real book that do everything at once on the calling thread. */
public final class Sessions {
  private Sessions() {}

  /** A session; every file asked for is the given one, null when the chooser is left. */
  public static Session of(Book book, @Nullable SchoolClass schoolClass, @Nullable Path file) {
    Session session =
        new Session(
            book,
            SharedTables.read(),
            Words.english(),
            Classroom.CLOCK,
            new Random(5),
            Worker.sameThread(),
            new OneFile(file),
            fault -> {
              throw new AssertionError(fault);
            });
    session.schoolClassProperty().set(schoolClass);
    return session;
  }

  /** A session on a classroom. */
  public static Session of(Classroom room) {
    return of(room.book, room.schoolClass, null);
  }

  /** The backups of a session's book; going back does nothing. */
  public static BackupsViewModel backups(Session session) {
    return new BackupsViewModel(
        session.book().file(),
        new SqliteCare(),
        session.words(),
        session.clock(),
        session.background(),
        session::unexpected,
        copy -> {});
  }

  private record OneFile(@Nullable Path file) implements PickFile {
    @Override
    public @Nullable Path open(Kind kind) {
      return file;
    }

    @Override
    public @Nullable Path save(Kind kind, String name) {
      return file == null ? null : file.resolve(name);
    }
  }
}
