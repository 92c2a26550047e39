package walebook.act.bring;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import walebook.act.bring.match.BringField;
import walebook.act.bring.match.BringWhat;
import walebook.act.bring.match.ColumnMatch;
import walebook.book.Book;
import walebook.record.Draft;

/**
 * Keeps what headers were taken for, so that the next workbook of the same hand is understood at
 * once. It stands among the book's drafts, one for each kind of table.
 */
final class KeepMapping {
  private static final String FORM = "bring";
  private static final String BETWEEN = "|";

  /** Headers that are remembered at most; the newest stay. */
  private static final int MOST = 400;

  private final Book book;

  KeepMapping(Book book) {
    this.book = book;
  }

  Map<String, ColumnMatch> find(BringWhat what) {
    Draft draft = book.drafts().find(FORM, what.key());
    Map<String, ColumnMatch> kept = new HashMap<>();
    if (draft != null) {
      draft.typed().forEach((header, text) -> put(kept, what, header, text));
    }
    return kept;
  }

  private static void put(
      Map<String, ColumnMatch> kept, BringWhat what, String header, String text) {
    int at = text.indexOf(BETWEEN);
    String field = at < 0 ? text : text.substring(0, at);
    if (field.isEmpty() || BringField.find(what, field) != null) {
      kept.put(header, new ColumnMatch(field, at < 0 ? "" : text.substring(at + 1)));
    }
  }

  void keep(BringWhat what, List<String> headers, List<ColumnMatch> columns) {
    Map<String, String> typed = new HashMap<>();
    for (int i = 0; i < headers.size(); i++) {
      if (!headers.get(i).isBlank()) {
        typed.putIfAbsent(headers.get(i), columns.get(i).field() + BETWEEN + columns.get(i).unit());
      }
    }
    find(what)
        .forEach(
            (header, match) -> {
              if (typed.size() < MOST) {
                typed.putIfAbsent(header, match.field() + BETWEEN + match.unit());
              }
            });
    book.drafts().keep(new Draft(FORM, what.key(), typed));
  }
}
