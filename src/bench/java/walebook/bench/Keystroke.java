package walebook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import java.util.concurrent.TimeUnit;
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
import walebook.act.piece.JudgePiece;
import walebook.act.piece.LoadPieceRoom;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.act.piece.ReadPiece;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.book.open.SqliteFiles;
import walebook.problem.Answer;
import walebook.record.PieceCode;
import walebook.record.SchoolClass;
import walebook.record.TestPiece;
import walebook.seam.PieceVerdict;
import walebook.tables.SharedTables;

/**
 * From a keystroke in the log form to the new verdict; its 99th percentile must stay under 16 ms.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class Keystroke {
  private static final String CODE = PieceCode.draw(new java.util.Random(1));
  private final Clock clock = Clock.systemUTC();
  private Path folder = Path.of("");
  private PieceRoom room =
      new PieceRoom(
          java.util.List.of(),
          java.util.List.of(),
          java.util.List.of(),
          java.util.List.of(),
          java.util.List.of(),
          Map.of(),
          walebook.quantity.Unit.MM);
  private PieceEntry entry =
      new PieceEntry(Ids.next(), Ids.next(), Ids.next(), null, null, null, null, Map.of());
  private int stroke;

  @Setup(Level.Trial)
  public void fill() throws IOException {
    folder = Files.createTempDirectory("walebook-bench");
    Path file = folder.resolve(MakeDemoBook.FILE);
    try (Book book =
        new MakeDemoBook(new SqliteFiles(), clock).make(file, MakeDemoBook.SEED).value()) {
      SchoolClass in = book.classes().all().get(0);
      room = LoadPieceRoom.of(book, SharedTables.read(), in.id());
      entry =
          new PieceEntry(
              Ids.next(),
              in.id(),
              room.students().get(0).id(),
              null,
              null,
              null,
              null,
              Map.of(
                  PieceField.CLOTH, room.cloths().get(0).name(),
                  PieceField.GRAIN, "course",
                  PieceField.STITCH, "304",
                  PieceField.MACHINE, "1",
                  PieceField.DIAL_WIDTH, "2.5",
                  PieceField.DIAL_LENGTH, "2",
                  PieceField.GAUGE, "100",
                  PieceField.EDGE_BEFORE, "200",
                  PieceField.EDGE_SEWN, "206",
                  PieceField.END, "gave"));
    }
  }

  @TearDown(Level.Trial)
  public void clear() throws IOException {
    Folders.delete(folder);
  }

  /** Types the length at which the seam gave, a digit at a time. */
  @Benchmark
  public PieceVerdict typeALength() {
    String[] strokes = {"1", "15", "152", "152.5"};
    PieceEntry typed = entry.with(PieceField.END_LENGTH, strokes[stroke++ % strokes.length]);
    Answer<TestPiece> read =
        ReadPiece.read(typed, room, LocalDate.now(clock), clock.instant(), CODE, null);
    if (!read.isGood()) {
      throw new IllegalStateException(read.problems().toString());
    }
    return JudgePiece.of(read.value(), room);
  }
}
