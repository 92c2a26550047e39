package walebook.desk.typing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.card.Card;
import walebook.act.card.CardClashes;
import walebook.act.card.CardSheet;
import walebook.act.card.LoadCards;
import walebook.act.card.LogCards;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.desk.common.FormFields;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.desk.common.Task;
import walebook.desk.common.Wish;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.SchoolClass;
import walebook.record.TestPiece;

/** A lesson's record cards in one grid: typing, whole columns, saving all that are good. */
public final class TypeInViewModel {
  /** The key of this place. */
  public static final String PLACE = "typing";

  private static final String FREE = "free-";

  private final Session session;
  private final Grid grid;
  private final CardsKept kept;
  private final BooleanProperty settings = new SimpleBooleanProperty(this, "settings");
  private final BooleanProperty down = new SimpleBooleanProperty(this, "down");
  private final ReadOnlyObjectWrapper<@Nullable CardSheet> sheet =
      new ReadOnlyObjectWrapper<>(this, "sheet");
  private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper(this, "busy");
  private final ObjectProperty<Notice> notice =
      new SimpleObjectProperty<>(this, "notice", Notice.NONE);
  private int free;
  private Task loading = new Task();

  public TypeInViewModel(Session session) {
    this.session = session;
    this.grid = new Grid(session.clock(), session.words(), this::edited);
    this.kept = new CardsKept(session, grid);
    settings.addListener((from, old, now) -> columnsChanged());
    session.wishProperty().addListener((from, old, now) -> take(now));
    take(session.wishProperty().get());
  }

  public Session session() {
    return session;
  }

  /** The cards' lesson, fields and room; null while no lesson is open. */
  public ReadOnlyObjectProperty<@Nullable CardSheet> sheetProperty() {
    return sheet.getReadOnlyProperty();
  }

  public ObservableList<CardRow> rows() {
    return grid.rows();
  }

  GridCursor cursor() {
    return grid.cursor();
  }

  /** The day on which the lesson was, and so the day on which its pieces were sewn. */
  public FormFields.Field on() {
    return grid.day();
  }

  /** Whether the columns of cloth and machine are shown, which the plan has filled in. */
  public BooleanProperty settingsProperty() {
    return settings;
  }

  /** Whether Enter goes down the column; otherwise along the card. */
  public BooleanProperty downProperty() {
    return down;
  }

  /** Whether cards are being read or saved. */
  public ReadOnlyBooleanProperty busyProperty() {
    return busy.getReadOnlyProperty();
  }

  /** Moves at each edit, so that a view can wait for a pause in the typing. */
  public ReadOnlyIntegerProperty editsProperty() {
    return kept.editsProperty();
  }

  public ObjectProperty<Notice> noticeProperty() {
    return notice;
  }

  /** The fields that are shown as columns. */
  public List<PieceField> columns() {
    CardSheet now = sheet.get();
    return now == null
        ? List.of()
        : now.columns().stream().filter(each -> settings.get() || !each.isSetting()).toList();
  }

  /** Opens a lesson's cards, with what was typed and not saved the last time. */
  public void open(UUID lessonId) {
    keepDraft();
    LoadCards load = new LoadCards(session.book(), session.tables());
    busy.set(true);
    loading.cancel();
    loading =
        session.run(
            progress -> Optional.ofNullable(load.of(lessonId)).map(found -> ready(load, found)),
            found -> {
              busy.set(false);
              found.ifPresent(this::loaded);
            });
  }

  /** Opens the cards of the lesson that was taught last, unless some are open or asked for. */
  public void openLatest() {
    SchoolClass of = session.schoolClassProperty().get();
    if (sheet.get() == null && !busy.get() && of != null) {
      LoadCards load = new LoadCards(session.book(), session.tables());
      busy.set(true);
      loading =
          session.run(
              progress -> Optional.ofNullable(load.latest(of.id(), LocalDate.now(session.clock()))),
              found -> found.ifPresentOrElse(this::open, () -> busy.set(false)));
    }
  }

  private record Ready(CardSheet sheet, List<Card> free) {}

  /** Cards beside the plan come back from the draft, but for those that were saved after all. */
  private Ready ready(LoadCards load, CardSheet found) {
    List<Card> beside = new ArrayList<>();
    for (int i = 1; CardDraft.has(found.draft(), FREE + i); i++) {
      String piece = found.draft().get(FREE + i + "|#piece");
      boolean saved = piece != null && session.book().pieces().find(UUID.fromString(piece)) != null;
      if (!saved && !found.room().students().isEmpty()) {
        UUID first = found.room().students().get(0).id();
        beside.add(load.free(found.lesson(), first, FREE + i, found.room()));
      }
    }
    return new Ready(found, beside);
  }

  private void loaded(Ready ready) {
    CardSheet found = ready.sheet();
    sheet.set(found);
    settings.set(false);
    columnsChanged();
    free = ready.free().size();
    grid.load(found, ready.free());
    kept.fresh();
    say(found.draft().isEmpty() ? "" : session.words().say("desk.typing.resumed"));
    grid.cursor().begin();
  }

  /** Adds a card for a piece beside the plan, of the student whose card one stands in. */
  public void addFree() {
    CardSheet now = sheet.get();
    if (now == null || now.room().students().isEmpty()) {
      return;
    }
    UUID student = grid.studentHere(now.room().students().get(0).id());
    String key = FREE + ++free;
    LoadCards load = new LoadCards(session.book(), session.tables());
    session.run(
        progress -> load.free(now.lesson(), student, key, now.room()),
        card -> {
          grid.add(card, now);
          settings.set(true);
          grid.cursor().go(rows().size() - 1, CardRow.STUDENT);
        });
  }

  /** Puts what stands above in the same column into the cell one stands in. */
  public void repeatAbove() {
    grid.repeatAbove();
  }

  /**
   * Puts the text of the cell one stands in into the whole column: into every card that is not
   * logged and whose own was not typed by hand. It can be taken back.
   */
  public void setColumn() {
    Grid.ColumnSet set = grid.setColumn();
    if (set != null) {
      Runnable undo =
          () -> {
            set.undo().run();
            notice.set(Notice.NONE);
          };
      String says = session.words().say("desk.typing.column-set", set.text(), set.cards());
      notice.set(new Notice(says, undo));
    }
  }

  /** Saves every card that is begun and good; the others stay with what is in their way. */
  public void save() {
    CardSheet now = sheet.get();
    if (now == null || busy.get() || !grid.isDayGood()) {
      return;
    }
    List<PieceEntry> entries = new ArrayList<>();
    Map<UUID, List<Problem>> confirmed = new HashMap<>();
    Map<UUID, Answer<TestPiece>> mended = new HashMap<>();
    for (CardRow row : rows()) {
      if (!row.isReady()) {
        continue;
      }
      List<Problem> asked = row.asked();
      grid.check(row);
      if (row.problems().stream().anyMatch(Problem::refuses)) {
        mended.put(row.pieceId(), Answer.bad(row.problems()));
      } else {
        entries.add(row.entry(grid.on()));
        confirmed.put(row.pieceId(), asked);
      }
    }
    busy.set(true);
    LogCards log = new LogCards(session.book(), session.clock(), session.chance());
    session
        .background()
        .run(
            progress -> {
              Map<UUID, Answer<TestPiece>> answers =
                  new HashMap<>(log.save(entries, now.room(), confirmed));
              answers.putAll(mended);
              return answers;
            },
            this::saved,
            fault -> {
              busy.set(false);
              session.unexpected(fault);
            });
  }

  private void saved(Map<UUID, Answer<TestPiece>> answers) {
    busy.set(false);
    Grid.Saved saved = grid.saved(answers);
    keepDraft();
    if (saved.good() > 0) {
      session.changed();
    }
    List<CardRow> clashing = grid.clashing();
    tell(saved.good(), saved.left(), clashing.size());
    CardRow first = saved.first();
    goTo(first == null && !clashing.isEmpty() ? clashing.get(0) : first);
  }

  private void tell(int good, int left, int clashing) {
    List<String> says = new ArrayList<>();
    if (left > 0) {
      says.add(session.words().say("desk.typing.saved-some", good, left));
      if (grid.asks()) {
        says.add(session.words().say("desk.typing.unlikely"));
      }
    } else if (good > 0) {
      says.add(session.words().say("desk.typing.saved", good));
    }
    if (clashing > 0) {
      says.add(session.words().say("desk.typing.clashing", clashing));
    }
    say(says.isEmpty() ? session.words().say("desk.typing.nothing") : String.join(" ", says));
  }

  /** To the field in the way; one that is folded away is shown first. */
  private void goTo(@Nullable CardRow row) {
    if (row == null) {
      return;
    }
    for (Problem each : row.problems()) {
      String field = each.place() instanceof Place.Field at ? at.name() : "";
      if (row.cell(field) != null) {
        boolean shown = columns().stream().anyMatch(column -> column.key().equals(field));
        if (!shown) {
          settings.set(true);
        }
        grid.cursor().go(rows().indexOf(row), field);
        return;
      }
    }
  }

  /** Keeps what is typed, so that it is there again after a crash or another day. */
  public void keepDraft() {
    CardSheet now = sheet.get();
    if (now != null) {
      kept.keep(now);
    }
  }

  /** Keeps what is typed at once, before the book is closed. */
  public void rest() {
    CardSheet now = sheet.get();
    if (now != null) {
      kept.rest(now);
    }
    sheet.set(null);
  }

  /** Back to the lesson's plan; what is typed waits. */
  public void back() {
    keepDraft();
    CardSheet now = sheet.get();
    session.wish(
        now == null
            ? Wish.show("lessons")
            : new Wish("lessons", Wish.What.OPEN, now.lesson().id()));
  }

  /** To the place where readings of cloths are logged. */
  void toCloths() {
    session.wish(Wish.show("cloths"));
  }

  /** A card in words: whose it is, its code, and what is in its way. */
  public String rowSays(CardRow row) {
    return HereSays.row(session, row);
  }

  private void take(@Nullable Wish wish) {
    if (wish == null || !wish.place().equals(PLACE)) {
      return;
    }
    UUID id = wish.id();
    if (id == null) {
      openLatest();
    } else {
      open(id);
    }
  }

  private void columnsChanged() {
    CardSheet now = sheet.get();
    if (now == null) {
      return;
    }
    List<String> shown = new ArrayList<>(List.of(CardRow.STUDENT, CardClashes.CODE));
    columns().forEach(each -> shown.add(each.key()));
    // What a card begins with, such as the distance between the marks, is seldom typed anew.
    List<String> filled =
        now.columns().stream()
            .filter(each -> !each.isSetting() && isOpen(now, each))
            .map(PieceField::key)
            .toList();
    grid.cursor().columns(shown, filled);
  }

  private static boolean isOpen(CardSheet now, PieceField field) {
    return now.cards().stream().anyMatch(each -> each.start().at(field).isEmpty());
  }

  private void edited() {
    kept.edited();
  }

  private void say(String sentence) {
    notice.set(new Notice(sentence, null));
  }
}
