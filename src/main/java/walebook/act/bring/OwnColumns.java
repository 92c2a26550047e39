package walebook.act.bring;

import java.util.HashMap;
import java.util.Map;
import walebook.act.bring.match.BringField;
import walebook.act.bring.match.BringWhat;
import walebook.act.piece.PieceField;
import walebook.sheet.Column;
import walebook.sheet.LogTables;
import walebook.sheet.PieceColumns;
import walebook.sheet.PieceLookup;
import walebook.words.Words;

/** The headers of our own workbook's tables, taken from where it is written. */
final class OwnColumns {
  private OwnColumns() {}

  /**
   * The key of the field that each title holds; empty for what is worked out from the others. No
   * workbook of ours has a roster to bring in.
   */
  static Map<String, String> of(BringWhat what, Words words) {
    Map<String, String> fields = new HashMap<>();
    switch (what) {
      case ROSTER -> {}
      case CLOTHS ->
          put(
              fields,
              what,
              LogTables.cloths(words),
              Map.of(
                  "cloth",
                  BringField.CLOTH_NAME,
                  "kind",
                  BringField.CLOTH_KIND,
                  "width",
                  "cloth-width"));
      case PIECES -> fields.putAll(pieces(words));
      case READINGS ->
          put(fields, what, LogTables.readings(words), Map.of("edge", BringField.READ_AT));
      case WASHES -> put(fields, what, LogTables.washes(words), Map.of());
      case NOTES ->
          put(
              fields,
              what,
              LogTables.notes(words),
              Map.of(
                  "about",
                  BringField.NOTE_ABOUT,
                  "which",
                  BringField.NOTE_WHICH,
                  "written",
                  BringField.NOTE_WRITTEN,
                  "author",
                  "note-from",
                  "words",
                  "note-body"));
    }
    return fields;
  }

  /** The sheet of our own workbook that holds this; everybody of a class has a row of progress. */
  static String sheet(BringWhat what, Words words) {
    return switch (what) {
      case ROSTER -> words.say("sheet.progress.name");
      case CLOTHS -> words.say("sheet.cloths.name");
      case PIECES -> words.say("sheet.pieces.name");
      case READINGS -> words.say("sheet.readings.name");
      case WASHES -> words.say("sheet.washes.name");
      case NOTES -> words.say("sheet.notes.name");
    };
  }

  private static void put(
      Map<String, String> fields,
      BringWhat what,
      Map<String, String> titles,
      Map<String, String> renamed) {
    titles.forEach(
        (key, title) -> {
          String field = renamed.getOrDefault(key, key);
          fields.put(title, BringField.find(what, field) == null ? "" : field);
        });
  }

  private static Map<String, String> pieces(Words words) {
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
