package walebook.book.jooq;

import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.UUID;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.Table;
import org.jooq.TableRecord;
import org.jooq.conf.Settings;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import walebook.book.BookTrouble;
import walebook.book.sqlite.SqliteLink;
import walebook.record.By;

/**
 * Who may use which connection: one writes at a time, a few read. Steps inside a write join its
 * transaction. The writer is whoever holds the lock: handing each save to a thread of its own cost
 * a tenth of the save.
 */
final class Access implements AutoCloseable {
  private static final int READERS = 3;

  private final Connection writeLink;
  private final Transactions transactions;
  private final DSLContext write;
  private final Inserts inserts;
  private final BlockingQueue<Connection> readers = new ArrayBlockingQueue<>(READERS);
  private final ReentrantLock writing = new ReentrantLock();
  private final Path file;
  private final Clock clock;
  private volatile By by = By.NOBODY;
  private volatile boolean closed;
  private @Nullable Recorder recorder;

  Access(Path file, Clock clock) throws SQLException {
    this.file = file;
    this.clock = clock;
    writeLink = SqliteLink.writer(file);
    transactions = new Transactions(writeLink);
    write = context(writeLink);
    inserts = new Inserts(write, writeLink);
    for (int i = 0; i < READERS; i++) {
      readers.add(SqliteLink.reader(file));
    }
  }

  private static DSLContext context(Connection link) {
    Settings settings =
        new Settings().withAttachRecords(false).withExecuteLogging(false).withRenderSchema(false);
    return DSL.using(link, SQLDialect.SQLITE, settings);
  }

  private boolean isWriter() {
    return writing.isHeldByCurrentThread();
  }

  /** Reads; inside a write it sees what was written so far. */
  <T> T read(Function<DSLContext, T> query) {
    if (isWriter()) {
      return Trouble.named(() -> query.apply(write));
    }
    Connection link = take();
    try {
      return Trouble.named(() -> Trouble.ofRows(() -> query.apply(context(link))));
    } finally {
      giveBack(link);
    }
  }

  /** A read may outlast the book: what it used is closed then, or the file would stay open. */
  private void giveBack(Connection link) {
    readers.add(link);
    if (closed) {
      try {
        closeReaders();
      } catch (SQLException e) {
        throw Trouble.of(e);
      }
    }
  }

  private void closeReaders() throws SQLException {
    for (Connection each = readers.poll(); each != null; each = readers.poll()) {
      each.close();
    }
  }

  private Connection take() {
    if (closed) {
      throw new BookTrouble(
          "unknown", "the book is closed", new IllegalStateException(file.toString()));
    }
    try {
      Connection link = readers.poll(1, TimeUnit.MINUTES);
      if (link == null) {
        throw new IllegalStateException("no reader came free");
      }
      return link;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while waiting to read", e);
    }
  }

  /** Runs steps in one transaction and returns when they are on the disk. */
  <T> T write(Function<DSLContext, T> steps) {
    return inTransaction(() -> steps.apply(write));
  }

  /** Who makes the changes that name nobody themselves. */
  void madeBy(By who) {
    by = who;
  }

  /** Inserts one row and notes it in the history. */
  void insert(TableRecord<?> row) {
    inTransaction(
        () -> {
          inserts.add(row);
          recorder().added(row);
          return row;
        });
  }

  /** Inserts one row of which the history is not to hear, or heard already. */
  void insertUnseen(TableRecord<?> row) {
    inTransaction(
        () -> {
          inserts.add(row);
          return row;
        });
  }

  /**
   * Updates a row whose saved version is the one before, and notes it in the history.
   *
   * @throws walebook.book.StaleRow when it is not
   */
  <R extends TableRecord<R>> void update(R row) {
    write(
        dsl -> {
          changing(row.getTable(), row.get(Rows.id(row.getTable())), Recorder.As.PLAIN);
          return Rows.update(dsl, row);
        });
  }

  /** Keeps what a thing is now for the history; called before it or a part of it is changed. */
  void changing(Table<?> table, UUID id, Recorder.As as) {
    recorder().changing(write, new Wholes.Key(table, id), as);
  }

  /** Puts the changes of this transaction under a step and a name that were chosen outside. */
  void underStep(UUID stepId, By who) {
    recorder().under(stepId, who);
  }

  private Recorder recorder() {
    if (recorder == null || !isWriter()) {
      throw new IllegalStateException("a change outside a transaction");
    }
    return recorder;
  }

  <T> T inTransaction(Supplier<T> steps) {
    if (isWriter()) {
      return steps.get();
    }
    return onWriter(() -> transactions.run(() -> recorded(steps)));
  }

  private <T> T recorded(Supplier<T> steps) {
    Recorder begun = new Recorder();
    recorder = begun;
    try {
      T result = steps.get();
      begun.write(write, clock.instant(), by, inserts::add);
      return result;
    } finally {
      recorder = null;
    }
  }

  /** Writes the file anew with freed space overwritten, and empties the log beside it. */
  void scrub() {
    onWriter(
        () -> {
          // The writer keeps statements ready, and a file is not written anew beneath those.
          try (Connection alone = SqliteLink.writer(file)) {
            SqliteLink.scrub(alone);
          }
          return Boolean.TRUE;
        });
  }

  private <T> T onWriter(Callable<T> work) {
    writing.lock();
    try {
      mustBeThere();
      return Trouble.named(work);
    } finally {
      writing.unlock();
    }
  }

  /**
   * A file or folder that was deleted under an open book takes writes without a word on some
   * systems, and nobody ever finds them again: nothing may be acknowledged then.
   */
  private void mustBeThere() {
    if (!Files.exists(file)) {
      throw new BookTrouble("gone", file.toString(), new NoSuchFileException(file.toString()));
    }
  }

  /** Runs work that writes through a connection of its own, while nobody else writes. */
  <T> T alone(Callable<T> work) {
    if (isWriter()) {
      throw new IllegalStateException("this can't be a step of something larger");
    }
    return onWriter(work);
  }

  @Override
  public void close() {
    writing.lock();
    try {
      closed = true;
      closeReaders();
      inserts.close();
      transactions.close();
      writeLink.close();
    } catch (SQLException e) {
      throw Trouble.of(e);
    } finally {
      writing.unlock();
    }
  }
}
