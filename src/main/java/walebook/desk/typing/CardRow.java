package walebook.desk.typing;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import walebook.act.card.Card;
import walebook.act.card.CardClashes;
import walebook.act.card.CardSheet;
import walebook.act.card.LoggedText;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.act.piece.ReadPiece;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Keyed;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.words.Words;

/** One card of the grid: its cells, and whether it can be saved. */
public final class CardRow {
  /** The column of whose piece it is; typed only for one beside the plan. */
  static final String STUDENT = "student";

  private final Card card;
  private final PieceRoom room;
  private final CardText texts;
  private final Map<String, CardCell> cells = new LinkedHashMap<>();
  private final ReadOnlyObjectWrapper<State> state =
      new ReadOnlyObjectWrapper<>(this, "state", State.OPEN);
  private UUID pieceId;
  private String code;
  private boolean logged;
  private List<Problem> problems = List.of();
  private List<Problem> asked = List.of();
  private @Nullable Problem codeClash;
  private Map<PieceField, String> inBook = Map.of();

  /** How a card stands. */
  public enum State {
    /** Nothing of it is typed. */
    OPEN,
    READY,
    /** Something is only unlikely: a second save takes it. */
    ASKS,
    IN_THE_WAY,
    LOGGED,
    /** Logged, but the card says otherwise. */
    CLASH
  }

  CardRow(Card card, CardSheet sheet, Words words, Consumer<CardRow> edited) {
    this.card = card;
    this.room = sheet.room();
    this.texts = new CardText(words, room);
    this.pieceId = card.start().pieceId();
    this.code = card.planned() == null ? "" : card.planned().code();
    Runnable tell = () -> edited.accept(this);
    if (card.planned() == null) {
      cells.put(STUDENT, new CardCell(STUDENT, name(false), text -> text, tell));
      cells.put(CardClashes.CODE, new CardCell(CardClashes.CODE, "", text -> text, tell));
    }
    for (PieceField each : sheet.columns()) {
      String start = texts.shown(each, card.start().at(each));
      cells.put(each.key(), new CardCell(each.key(), start, text -> texts.whole(each, text), tell));
    }
    if (card.isLogged()) {
      inTheBook(card.logged());
    }
  }

  Card card() {
    return card;
  }

  UUID pieceId() {
    return pieceId;
  }

  /** The key that an earlier draft gave its piece, so that a save tried twice saves once. */
  void pieceId(UUID kept) {
    pieceId = kept;
  }

  /** The code on its label; empty for one that has none yet. */
  public String code() {
    CardCell typed = cells.get(CardClashes.CODE);
    return typed == null || logged ? code : typed.text();
  }

  /** The field in a column, or null when there is nothing to type. */
  public @Nullable CardCell cell(String column) {
    return cells.get(column);
  }

  Iterable<CardCell> cells() {
    return cells.values();
  }

  /** Whose it is, by name or alias. */
  public String name(boolean hidden) {
    Student student = room.student(studentId());
    return student == null ? "" : hidden ? student.alias() : student.name();
  }

  private UUID studentId() {
    CardCell typed = cells.get(STUDENT);
    UUID named = typed == null ? null : CardText.student(typed.text(), room);
    return named == null ? card.start().studentId() : named;
  }

  public ReadOnlyObjectProperty<State> stateProperty() {
    return state.getReadOnlyProperty();
  }

  public State state() {
    return state.get();
  }

  boolean isLogged() {
    return logged;
  }

  /** True when somebody typed anything of this card: what stands for a column does not count. */
  boolean isBegun() {
    return cells.values().stream().anyMatch(CardCell::isTyped);
  }

  boolean isReady() {
    return isBegun() && !logged;
  }

  /** Everything that is in the way or asked about, in the order of the columns. */
  public List<Problem> problems() {
    return problems;
  }

  /** What was asked about at the last save. */
  List<Problem> asked() {
    return asked;
  }

  void clash(@Nullable Problem ofCode) {
    codeClash = ofCode;
  }

  /** The card as the form would hold it. */
  PieceEntry entry(String sewnOn) {
    PieceEntry start = card.start();
    Map<PieceField, String> typed = new EnumMap<>(PieceField.class);
    typed.putAll(start.typed());
    for (CardCell each : cells.values()) {
      PieceField field = Keyed.find(PieceField.class, each.key());
      if (field != null) {
        typed.put(field, texts.typed(field, each, start.at(field)));
      }
    }
    typed.put(PieceField.SEWN_ON, sewnOn);
    if (start.at(PieceField.MEASURED_BY).equals(start.studentId().toString())) {
      typed.put(PieceField.MEASURED_BY, studentId().toString());
    }
    String label = code();
    return new PieceEntry(
        pieceId,
        start.classId(),
        studentId(),
        start.lessonId(),
        start.plannedId(),
        label.isBlank() ? null : label,
        null,
        typed);
  }

  /** Reads the card anew. */
  void check(String sewnOn, LocalDate today, Instant now) {
    List<Problem> found = new ArrayList<>();
    if (logged) {
      differences(found);
    } else if (isBegun()) {
      PieceEntry entry = entry(sewnOn);
      CardCell who = cells.get(STUDENT);
      if (who != null && CardText.student(who.text(), room) == null) {
        found.add(Problem.refuse("card.student", Place.field(STUDENT), who.text(), ""));
      }
      if (codeClash != null) {
        found.add(codeClash);
      }
      found.addAll(ReadPiece.read(entry, room, today, now, "AAAAAA", null).problems());
      found.addAll(CardClashes.within(entry));
    }
    show(found);
    asked = List.of();
  }

  private void differences(List<Problem> found) {
    for (CardCell each : cells.values()) {
      PieceField field = Keyed.find(PieceField.class, each.key());
      if (field != null) {
        String typed = texts.typed(field, each, "");
        Problem differs =
            CardClashes.differs(field, typed, shownInBook(field, typed), room.lengthUnit());
        if (differs != null) {
          found.add(differs);
        }
      }
    }
  }

  /** What the book has, as the card would have it: in its unit, or as a key where it has keys. */
  private @Nullable String shownInBook(PieceField field, String typed) {
    String has = inBook.get(field);
    boolean keyed = !texts.choices().all(field).isEmpty();
    return has == null || keyed || has.equals(typed) ? has : texts.shown(field, has);
  }

  /** A problem in the words of the card. */
  Problem worded(Problem problem) {
    return texts.choices().worded(problem);
  }

  /** The choices of a field that a text can still become, in words. */
  List<String> near(PieceField field, String typed) {
    return texts.choices().near(field, typed);
  }

  /** Takes in what a save answered: what is in the way shows at once. */
  void refused(List<Problem> now) {
    show(now);
    asked = now.stream().noneMatch(Problem::refuses) ? List.copyOf(now) : List.of();
    cells.values().forEach(CardCell::leave);
  }

  /** The piece is in the book now. */
  void logged(TestPiece piece) {
    code = piece.code();
    inTheBook(LoggedText.of(piece, room));
    show(List.of());
  }

  private void inTheBook(Map<PieceField, String> has) {
    logged = true;
    inBook = has;
    for (CardCell each : cells.values()) {
      PieceField field = Keyed.find(PieceField.class, each.key());
      String book = field == null ? each.text() : texts.shown(field, has.getOrDefault(field, ""));
      each.begin(field == null ? book : "", book);
    }
    state.set(State.LOGGED);
  }

  private void show(List<Problem> now) {
    problems = List.copyOf(now);
    Map<String, Problem> first =
        now.stream()
            .filter(each -> each.place() instanceof Place.Field)
            .collect(
                Collectors.toMap(
                    each -> ((Place.Field) each.place()).name(), each -> each, (a, b) -> a));
    cells.values().forEach(each -> each.found(first.get(each.key())));
    state.set(stands());
  }

  private State stands() {
    if (logged) {
      return problems.isEmpty() ? State.LOGGED : State.CLASH;
    }
    if (!isBegun()) {
      return State.OPEN;
    }
    if (problems.isEmpty()) {
      return State.READY;
    }
    return problems.stream().anyMatch(Problem::refuses) ? State.IN_THE_WAY : State.ASKS;
  }
}
