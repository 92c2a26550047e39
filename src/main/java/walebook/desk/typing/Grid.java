package walebook.desk.typing;

import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.card.Card;
import walebook.act.card.CardClashes;
import walebook.act.card.CardSheet;
import walebook.desk.common.FormFields;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.TestPiece;
import walebook.words.Words;

/** The cards of one lesson together: what one of them says is checked against the others. */
final class Grid {
  static final String ON = "sewn-on";

  private final Clock clock;
  private final Words words;
  private final Runnable changed;
  private final ObservableList<CardRow> rows = FXCollections.observableArrayList();
  private final GridCursor cursor = new GridCursor(rows);
  private final FormFields day = new FormFields(this::dayTyped, ON);
  private boolean loading;

  /** How a column was set: what with, on how many cards, and how to take it back. */
  record ColumnSet(String text, int cards, Runnable undo) {}

  /** How many cards a save took in and left, and the first that was left. */
  record Saved(int good, int left, @Nullable CardRow first) {}

  /**
   * An empty grid.
   *
   * @param changed told of each edit
   */
  Grid(Clock clock, Words words, Runnable changed) {
    this.clock = clock;
    this.words = words;
    this.changed = changed;
  }

  ObservableList<CardRow> rows() {
    return rows;
  }

  GridCursor cursor() {
    return cursor;
  }

  FormFields.Field day() {
    return day.field(ON);
  }

  String on() {
    return day.text(ON).strip();
  }

  /** Fills the grid; what was typed before comes back onto its cards. */
  void load(CardSheet sheet, List<Card> beside) {
    loading = true;
    String lesson = sheet.lesson().taughtOn().toString();
    day.put(Map.of(ON, sheet.draft().getOrDefault(ON, lesson)));
    rows.clear();
    sheet.cards().forEach(each -> add(each, sheet));
    beside.forEach(each -> add(each, sheet));
    rows.forEach(each -> CardDraft.onto(each, sheet.draft()));
    loading = false;
    codes();
    rows.forEach(this::check);
  }

  void add(Card card, CardSheet sheet) {
    rows.add(new CardRow(card, sheet, words, this::edited));
  }

  /** Puts what stands above in the same column into the cell one stands in. */
  void repeatAbove() {
    GridCursor.Spot at = cursor.atProperty().get();
    CardCell cell = at == null ? null : rows.get(at.row()).cell(at.column());
    for (int row = at == null ? -1 : at.row() - 1; row >= 0 && cell != null; row--) {
      CardCell above = rows.get(row).cell(at.column());
      if (above != null) {
        cell.textProperty().set(above.text().isEmpty() ? above.hint() : above.text());
        return;
      }
    }
  }

  /**
   * Puts the text of the cell one stands in into every card that is not logged and whose own was
   * not typed by hand; null when one stands nowhere.
   */
  @Nullable ColumnSet setColumn() {
    GridCursor.Spot at = cursor.atProperty().get();
    CardCell from = at == null ? null : rows.get(at.row()).cell(at.column());
    if (at == null || from == null) {
      return null;
    }
    Map<CardCell, String> before = new LinkedHashMap<>();
    Map<CardCell, Boolean> stood = new HashMap<>();
    for (CardRow row : rows) {
      CardCell cell = row.cell(at.column());
      if (cell != null && !cell.equals(from) && !row.isLogged() && !cell.isTyped()) {
        before.put(cell, cell.text());
        stood.put(cell, cell.isForAll());
        cell.putForAll(from.text(), true);
      }
    }
    return new ColumnSet(
        from.text(),
        before.size(),
        () ->
            before.forEach((cell, text) -> cell.putForAll(text, stood.getOrDefault(cell, false))));
  }

  void check(CardRow row) {
    row.check(on(), LocalDate.now(clock), clock.instant());
  }

  /** Checks the day; its problem shows at its field. */
  boolean isDayGood() {
    String typed = on();
    Problem wrong = null;
    try {
      if (LocalDate.parse(typed).isAfter(LocalDate.now(clock))) {
        wrong = Problem.refuse("card.date-later", Place.field(ON), typed, "");
      }
    } catch (DateTimeParseException e) {
      wrong = Problem.refuse("date.not-a-date", Place.field(ON), typed, "2026-10-05");
    }
    day.show(wrong == null ? List.of() : List.of(wrong));
    return wrong == null;
  }

  /** Takes in what a save answered, by the piece's key. */
  Saved saved(Map<UUID, Answer<TestPiece>> answers) {
    int good = 0;
    CardRow first = null;
    for (CardRow row : rows) {
      Answer<TestPiece> answer = answers.get(row.pieceId());
      if (answer == null || row.isLogged()) {
        continue;
      }
      if (answer.isGood()) {
        row.logged(answer.value());
        good++;
      } else {
        row.refused(answer.problems());
        first = first == null ? row : first;
      }
    }
    changed.run();
    return new Saved(good, answers.size() - good, first);
  }

  private void edited(CardRow row) {
    if (!loading) {
      changed.run();
      codes();
      check(row);
    }
  }

  private void dayTyped() {
    if (!loading) {
      changed.run();
      rows.forEach(this::check);
    }
  }

  /** The same code on two cards shows on each that has no plan, whichever was typed last. */
  private void codes() {
    Map<UUID, String> codes = new LinkedHashMap<>();
    rows.forEach(each -> codes.put(each.pieceId(), each.code()));
    Map<UUID, Problem> clashes = CardClashes.codes(codes);
    for (CardRow row : rows) {
      if (row.card().planned() == null && !row.isLogged()) {
        row.clash(clashes.get(row.pieceId()));
        check(row);
      }
    }
  }

  /** The cards that are in the book and say otherwise than it does. */
  List<CardRow> clashing() {
    return rows.stream().filter(row -> row.state() == CardRow.State.CLASH).toList();
  }

  /** Whether something on a card is only unlikely. */
  boolean asks() {
    return rows().stream()
        .flatMap(row -> row.problems().stream())
        .anyMatch(each -> !each.refuses());
  }

  /**
   * Whose card one stands in.
   *
   * @param otherwise while one stands in none
   */
  UUID studentHere(UUID otherwise) {
    GridCursor.Spot at = cursor().atProperty().get();
    return at == null ? otherwise : rows().get(at.row()).entry(on()).studentId();
  }
}
