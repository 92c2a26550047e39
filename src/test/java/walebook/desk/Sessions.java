package walebook.desk;

import java.nio.file.Path;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteCare;
import walebook.desk.common.Background;
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

  /** A session in which nobody has chosen a class yet. */
  public static Session bare(Book book, Background background, PickFile files) {
    return new Session(
        book,
        SharedTables.read(),
        Words.english(),
        Classroom.CLOCK,
        new Random(5),
        background,
        files,
        fault -> {
          throw new AssertionError(fault);
        });
  }

  /**
   * A session; what is opened is the given path, what is saved lies in it; null when the chooser is
   * left.
   */
  public static Session of(Book book, @Nullable SchoolClass schoolClass, @Nullable Path path) {
    Session session = bare(book, Worker.sameThread(), new AtPath(path));
    session.schoolClassProperty().set(schoolClass);
    return session;
  }

  /** A session on a book without a class, in which choosers are left. */
  public static Session of(Book book) {
    return of(book, (SchoolClass) null, null);
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

  private record AtPath(@Nullable Path path) implements PickFile {
    @Override
    public @Nullable Path open(Kind kind) {
      return path;
    }

    @Override
    public @Nullable Path save(Kind kind, String name) {
      return path == null ? null : path.resolve(name);
    }
  }
}
