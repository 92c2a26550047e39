package walebook.act.bring;

import java.util.HashMap;
import java.util.Map;
import walebook.act.bring.match.BringField;
import walebook.act.bring.match.BringWhat;
import walebook.act.piece.PieceField;
import walebook.sheet.Column;
import walebook.sheet.PieceColumns;
import walebook.sheet.PieceLookup;
import walebook.words.Words;

/** The headers of our own workbook's pieces, taken from where it is written. */
final class OwnColumns {
  private OwnColumns() {}

  /** The key of the field that each title holds; empty for what is worked out from the others. */
  static Map<String, String> of(Words words) {
    Map<String, String> fields = new HashMap<>();
    for (Column<?> each : PieceColumns.all(PieceLookup.NONE, words)) {
      fields.put(each.title(words), field(each.key()));
    }
    return fields;
  }

  private static String field(String column) {
    return switch (column) {
      case "stitch-type" -> PieceField.STITCH.key();
      case "needle-size" -> PieceField.NEEDLE_NM.key();
      case "parent" -> BringField.AGAIN_OF;
      // The pull that counts is one of all pulls.
      case "end", "end-length" -> "";
      default -> BringField.find(BringWhat.PIECES, column) == null ? "" : column;
    };
  }
}
