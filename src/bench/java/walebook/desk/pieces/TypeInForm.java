package walebook.desk.pieces;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import walebook.act.book.MakeDemoBook;
import walebook.act.piece.PieceField;
import walebook.book.Book;
import walebook.book.open.SqliteFiles;
import walebook.desk.common.PickFile;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.quantity.Unit;
import walebook.record.SchoolClass;
import walebook.tables.SharedTables;
import walebook.words.Words;

/**
 * A keystroke in the log form's view model, with the new verdict, gauge and sentences behind it, on
 * the demo class; its 99th percentile must stay under one frame, 16 ms.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class TypeInForm {
  private static final String[] STROKES = {"1", "15", "152", "152.", "152.5"};

  private @Nullable Path folder;
  private @Nullable Book book;
  private @Nullable LogFormViewModel form;
  private int stroke;

  @Setup(Level.Trial)
  public void open() throws IOException {
    Path made = Files.createTempDirectory("walebook-bench");
    folder = made;
    Clock clock = Clock.systemUTC();
    Book demo =
        new MakeDemoBook(new SqliteFiles(), clock)
            .make(made.resolve(MakeDemoBook.FILE), MakeDemoBook.SEED)
            .value();
    book = demo;
    Session session =
        new Session(
            demo,
            SharedTables.read(),
            Words.english(),
            clock,
            new Random(1),
            Worker.sameThread(),
            new NoFile(),
            fault -> {
              throw new IllegalStateException(fault);
            });
    SchoolClass in = demo.classes().all().get(0);
    session.schoolClassProperty().set(in);
    session.studentProperty().set(demo.students().all().get(0));
    LogFormViewModel begun = new LogFormViewModel(session, Unit.MM, piece -> {});
    begun.begin(new LoadForm(session).own(in.id(), demo.students().all().get(0).id()));
    begun.field(PieceField.END).textProperty().set("gave");
    form = begun;
  }

  private static final class NoFile implements PickFile {
    @Override
    public @Nullable Path open(Kind kind) {
      return null;
    }

    @Override
    public @Nullable Path save(Kind kind, String name) {
      return null;
    }
  }

  @TearDown(Level.Trial)
  public void close() throws IOException {
    Objects.requireNonNull(book).close();
    walebook.bench.Folders.delete(Objects.requireNonNull(folder));
  }

  /** Types the length at which the seam gave, a digit at a time. */
  @Benchmark
  public @Nullable Meaning typeALength() {
    LogFormViewModel typed = Objects.requireNonNull(form);
    typed.field(PieceField.END_LENGTH).textProperty().set(STROKES[stroke++ % STROKES.length]);
    return typed.meaningProperty().get();
  }
}
