package walebook.command;

import java.nio.file.Path;
import walebook.book.Classroom;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/** A book with one piece that gave at 140 mm, to run commands on. */
record OnePiece(Path file, TestPiece piece) {
  static OnePiece in(Path folder) {
    Path file = folder.resolve("a.walebook");
    try (Classroom room = Classroom.in(file)) {
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
      return new OnePiece(file, piece);
    }
  }

  String code() {
    return piece.code();
  }

  Ran run(String... args) {
    return Ran.on(file, args);
  }
}
