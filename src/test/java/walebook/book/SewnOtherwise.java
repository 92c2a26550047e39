package walebook.book;

import walebook.record.Setting;
import walebook.record.TestPiece;

/** A piece as it would be with one thing of its setting another. */
public final class SewnOtherwise {
  private SewnOtherwise() {}

  static TestPiece threaded(TestPiece piece, String thread) {
    return with(piece, thread, piece.setting().stabiliser());
  }

  public static TestPiece stabilised(TestPiece piece, String stabiliser) {
    return with(piece, piece.setting().thread(), stabiliser);
  }

  private static TestPiece with(TestPiece piece, String thread, String stabiliser) {
    Setting was = piece.setting();
    return new TestPiece(
        piece.id(),
        piece.code(),
        piece.whose(),
        piece.cloth(),
        new Setting(
            was.method(),
            was.machineId(),
            was.machineKind(),
            was.stitchType(),
            was.stitchName(),
            was.dialWidth(),
            was.dialLength(),
            was.sewnWidthMm(),
            was.sewnLengthMm(),
            was.needle(),
            thread,
            was.pressure(),
            was.pressureDial(),
            was.tension(),
            was.tensionDial(),
            was.differentialFeed(),
            stabiliser,
            was.hemMethod()),
        piece.measure(),
        piece.seen(),
        piece.parent(),
        piece.stamp());
  }
}
