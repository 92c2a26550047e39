package walebook.act.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.LoadPieceRoom;
import walebook.act.piece.MendTestPiece;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.book.Book;
import walebook.compare.Names;
import walebook.record.Binned;
import walebook.record.Change;
import walebook.record.PlannedPiece;
import walebook.record.TestPiece;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** What happened to one piece: planned, saved, corrected, marked, binned, by whom and when. */
public final class PieceTimeline {
  private static final String PIECE = "test_piece";
  private static final String PLANNED = "planned_piece";

  private final Book book;
  private final SharedTables tables;
  private final Words words;
  private final boolean namesHidden;
  private final SayChange say;

  public PieceTimeline(Book book, SharedTables tables, Words words, boolean namesHidden) {
    this.book = book;
    this.tables = tables;
    this.words = words;
    this.namesHidden = namesHidden;
    this.say = new SayChange(book, words, namesHidden);
  }

  /**
   * A field that was changed, as the form shows it.
   *
   * @param from empty when it was empty
   * @param to empty when it is empty
   */
  public record Field(PieceField field, String from, String to) {}

  /** One thing that happened. */
  public record Event(Instant at, String who, String what, List<Field> fields) {
    public Event {
      fields = List.copyOf(fields);
    }
  }

  /** The key of a piece by its code, also of one in the bin; null when there is none. */
  public @Nullable UUID find(String code) {
    TestPiece piece = book.pieces().byCode(code);
    if (piece != null) {
      return piece.id();
    }
    return book.bin().all().stream()
        .filter(each -> each.entity().equals(PIECE))
        .filter(
            each -> book.history().textIn(each.rows(), PIECE, each.entityId(), "code").equals(code))
        .map(Binned::entityId)
        .findFirst()
        .orElse(null);
  }

  /** Everything that happened to a piece, oldest first. */
  public List<Event> of(UUID pieceId) {
    List<Change> changes = new ArrayList<>(book.history().of(PIECE, pieceId));
    changes.addAll(book.history().around(pieceId));
    List<Event> events = new ArrayList<>();
    Collections.reverse(changes);
    changes.forEach(each -> events.add(event(each)));
    TestPiece piece = book.pieces().find(pieceId);
    if (piece != null) {
      beginning(piece, changes, events);
    }
    events.sort(Comparator.comparing(Event::at));
    return events;
  }

  /** A piece saved before the history began tells itself when that was. */
  private void beginning(TestPiece piece, List<Change> changes, List<Event> events) {
    boolean known = changes.stream().anyMatch(each -> each.entity().equals(PIECE) && each.isNew());
    String nobody = words.say("act.history.somebody");
    if (!known) {
      String what = words.say("act.history.added", thing(piece));
      events.add(0, new Event(piece.stamp().created(), nobody, what, List.of()));
    }
    UUID plannedId = piece.whose().plannedId();
    PlannedPiece planned = plannedId == null ? null : book.lessons().planned(plannedId);
    if (planned != null) {
      Change added =
          book.history().of(PLANNED, planned.id()).stream()
              .filter(Change::isNew)
              .findFirst()
              .orElse(null);
      events.add(
          0,
          new Event(
              planned.stamp().created(),
              added == null ? nobody : say.who(added),
              words.say("act.history.planned"),
              List.of()));
    }
  }

  private String thing(TestPiece piece) {
    String json = book.history().now(PIECE, piece.id());
    return say.thing(PIECE, piece.id(), json == null ? "" : json);
  }

  private Event event(Change change) {
    boolean corrected =
        change.entity().equals(PIECE) && change.before() != null && change.after() != null;
    return new Event(
        change.doneAt(),
        say.who(change),
        say.change(change),
        corrected
            ? fields(
                Objects.requireNonNull(change.before()), Objects.requireNonNull(change.after()))
            : List.of());
  }

  private List<Field> fields(String before, String after) {
    TestPiece from = book.history().pieceIn(before);
    TestPiece to = book.history().pieceIn(after);
    if (from == null || to == null) {
      return List.of();
    }
    PieceRoom room = LoadPieceRoom.of(book, tables, to.whose().classId());
    Names names = Names.of(book, namesHidden);
    PieceEntry was = MendTestPiece.typed(from, room);
    PieceEntry is = MendTestPiece.typed(to, room);
    List<Field> changed = new ArrayList<>();
    for (PieceField field : PieceField.values()) {
      String left = Objects.requireNonNullElse(was.typed().get(field), "");
      String right = Objects.requireNonNullElse(is.typed().get(field), "");
      if (!left.equals(right)) {
        changed.add(new Field(field, shown(field, left, names), shown(field, right, names)));
      }
    }
    return changed;
  }

  private String shown(PieceField field, String typed, Names names) {
    if (typed.isEmpty() || field.kind() != PieceField.Kind.CHOICE) {
      return typed;
    }
    String key = "common.choice." + typed;
    return words.has(key) ? words.say(key) : names.of(typed);
  }
}
