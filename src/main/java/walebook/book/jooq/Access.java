package walebook.book.jooq;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.conf.Settings;
import org.jooq.impl.DSL;
import walebook.book.sqlite.SqliteLink;

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

  Access(Path file) throws SQLException {
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
      readers.add(link);
    }
  }

  private Connection take() {
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

  /** Inserts one row; on its own it needs no transaction around it. */
  void insert(org.jooq.TableRecord<?> row) {
    if (isWriter()) {
      inserts.add(row);
      return;
    }
    onWriter(
        () -> {
          inserts.add(row);
          return Boolean.TRUE;
        });
  }

  <T> T inTransaction(Supplier<T> steps) {
    if (isWriter()) {
      return steps.get();
    }
    return onWriter(() -> transactions.run(steps));
  }

  private <T> T onWriter(Callable<T> work) {
    writing.lock();
    try {
      return Trouble.named(work);
    } finally {
      writing.unlock();
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
      for (Connection reader : readers) {
        reader.close();
      }
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
