package walebook.act.piece;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.record.Grain;
import walebook.tables.SharedTables;

/** A class with one measured cloth and a form that is filled well, for tests of logging. */
final class Bench implements AutoCloseable {
  static final SharedTables TABLES = SharedTables.read();
  final Classroom room;

  Bench(Path file) {
    room = Classroom.in(file);
    for (double stretched : List.of(149, 150, 151)) {
      room.book.clothLog().add(room.reading(Grain.COURSE, stretched));
    }
  }

  PieceRoom pieceRoom() {
    return LoadPieceRoom.of(room.book, TABLES, room.schoolClass.id());
  }

  LogTestPiece log() {
    return new LogTestPiece(room.book, Classroom.CLOCK, new Random(5));
  }

  /** A zigzag seam on the measured cloth that held to 152 mm; all is likely. */
  PieceEntry good() {
    return good(null);
  }

  PieceEntry good(@Nullable UUID parent) {
    Map<PieceField, String> typed = new EnumMap<>(PieceField.class);
    typed.put(PieceField.CLOTH, "grey jersey");
    typed.put(PieceField.GRAIN, "course");
    typed.put(PieceField.LAYERS, "2");
    typed.put(PieceField.METHOD, "seam");
    typed.put(PieceField.MACHINE, "4");
    typed.put(PieceField.STITCH, "304");
    typed.put(PieceField.DIAL_WIDTH, "2,5");
    typed.put(PieceField.DIAL_LENGTH, "2.5");
    typed.put(PieceField.NEEDLE_POINT, "jersey");
    typed.put(PieceField.NEEDLE_NM, "75");
    typed.put(PieceField.PRESSURE, "lower");
    typed.put(PieceField.GAUGE, "10 cm");
    typed.put(PieceField.EDGE_BEFORE, "100");
    typed.put(PieceField.EDGE_SEWN, "103");
    typed.put(PieceField.EDGE_PRESSED, "101");
    typed.put(PieceField.END, "held");
    typed.put(PieceField.END_LENGTH, "152");
    typed.put(PieceField.RELEASED, "102");
    typed.put(PieceField.GRADE, "4");
    typed.put(PieceField.FAULTS, "wavy-seam,all-along,1,sewn");
    return new PieceEntry(
        Ids.next(), room.schoolClass.id(), room.first.id(), null, null, null, parent, typed);
  }

  @Override
  public void close() {
    room.close();
  }
}
