package walebook.desk.decide;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.desk.common.ToBin;
import walebook.garment.GarmentKind;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.GarmentSheet;
import walebook.record.Student;

/** The list of garment sheets, and the one that is open. */
public final class SheetsViewModel {
  private final Session session;
  private final Unit lengths;
  private final Map<UUID, SheetViewModel> begun = new HashMap<>();
  private final ObservableList<Line> lines = FXCollections.observableArrayList();
  private final ObservableList<Cloth> cloths = FXCollections.observableArrayList();
  private final ReadOnlyBooleanWrapper loaded = new ReadOnlyBooleanWrapper(this, "loaded");
  private final ReadOnlyObjectWrapper<@Nullable SheetViewModel> open =
      new ReadOnlyObjectWrapper<>(this, "open");
  private final ReadOnlyObjectWrapper<@Nullable CompareViewModel> comparing =
      new ReadOnlyObjectWrapper<>(this, "comparing");
  private final Map<SheetViewModel, CompareViewModel> compared = new HashMap<>();
  private @Nullable SheetViewModel fresh;

  /** One sheet of the list, in words. */
  public record Line(GarmentSheet sheet, String kind, String whose, String cloth) {}

  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);

  private record Found(List<GarmentSheet> sheets, List<Student> students, List<Cloth> cloths) {}

  /**
   * The list.
   *
   * @param lengths what a length without a unit means
   */
  public SheetsViewModel(Session session, Unit lengths) {
    this.session = session;
    this.lengths = lengths;
    session.changesProperty().addListener((from, old, now) -> load());
    session.namesHiddenProperty().addListener((from, old, now) -> load());
    session.studentProperty().addListener((from, old, now) -> forget());
    load();
  }

  public ObservableList<Line> lines() {
    return lines;
  }

  /** The cloths to choose from. */
  public ObservableList<Cloth> cloths() {
    return cloths;
  }

  /** False until the book was read for the first time. */
  public ReadOnlyBooleanProperty loadedProperty() {
    return loaded.getReadOnlyProperty();
  }

  /** The sheet that is open; null while the list is. */
  public ReadOnlyObjectProperty<@Nullable SheetViewModel> openProperty() {
    return open.getReadOnlyProperty();
  }

  /** The sheet that is open with two choices side by side; null while it is not. */
  public ReadOnlyObjectProperty<@Nullable CompareViewModel> comparingProperty() {
    return comparing.getReadOnlyProperty();
  }

  /** Compares the sheet that is open with another choice; one begun before is gone on with. */
  public void compare() {
    SheetViewModel sheet = open.get();
    if (sheet != null) {
      CompareViewModel begun = compared.get(sheet);
      CompareViewModel next = begun == null ? new CompareViewModel(sheet) : begun;
      compared.put(sheet, next);
      next.follow();
      comparing.set(next);
    }
  }

  /** Puts the other choice on the sheet and shows it. */
  public void take() {
    CompareViewModel now = comparing.get();
    if (now != null) {
      now.take();
      stopComparing();
    }
  }

  /** Back to the sheet as it stands. */
  public void stopComparing() {
    comparing.set(null);
  }

  /** Keeps what is typed, before the book is closed. */
  public void rest() {
    begun.values().forEach(SheetViewModel::rest);
    SheetViewModel sheet = fresh;
    if (sheet != null) {
      sheet.rest();
    }
  }

  /** Begins a new sheet, or goes on with the one that was begun and not saved. */
  public void add() {
    SheetViewModel sheet = fresh;
    if (sheet == null || sheet.saved() != null) {
      sheet = new SheetViewModel(session, lengths);
      sheet.begin();
      fresh = sheet;
    }
    open.set(sheet);
  }

  /** Opens a saved one as it was left, or as the book holds it now where it was saved since. */
  public void open(GarmentSheet saved) {
    SheetViewModel left = begun.get(saved.id());
    if (left != null && !isAt(left, saved)) {
      left.keepDraft();
      compared.remove(left);
      begun.remove(saved.id());
    }
    open.set(
        begun.computeIfAbsent(
            saved.id(),
            id -> {
              SheetViewModel sheet = new SheetViewModel(session, lengths);
              sheet.open(saved);
              return sheet;
            }));
  }

  private static boolean isAt(SheetViewModel sheet, GarmentSheet now) {
    GarmentSheet saved = sheet.saved();
    return saved != null && saved.stamp().version() == now.stamp().version();
  }

  /** Somebody else sits down: girths that were typed and not kept are nobody else's business. */
  private void forget() {
    close();
    fresh = null;
    begun.clear();
    compared.clear();
  }

  /** What came of putting a sheet in the bin. */
  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** Puts the open sheet in the bin, the girths kept with it as well; a new one is only left. */
  public void bin() {
    SheetViewModel sheet = open.get();
    GarmentSheet saved = sheet == null ? null : sheet.saved();
    if (saved != null) {
      UUID id = saved.id();
      new ToBin(session)
          .put(
              "garment_sheet",
              id,
              notice::set,
              () -> {
                close();
                begun.remove(id);
              });
    }
  }

  /** Back to the list. */
  public void close() {
    SheetViewModel sheet = open.get();
    if (sheet != null) {
      sheet.keepDraft();
    }
    comparing.set(null);
    open.set(null);
  }

  private void load() {
    session.run(
        progress ->
            new Found(
                session.book().garments().all(),
                session.book().students().all(),
                session.book().cloths().all()),
        this::show);
  }

  private void show(Found found) {
    Map<UUID, String> people = new HashMap<>();
    boolean hidden = session.namesHiddenProperty().get();
    found.students().forEach(each -> people.put(each.id(), hidden ? each.alias() : each.name()));
    Map<UUID, String> names = new HashMap<>();
    found.cloths().forEach(each -> names.put(each.id(), each.name()));
    cloths.setAll(found.cloths().stream().filter(each -> !each.retired()).toList());
    lines.setAll(
        found.sheets().stream()
            .map(
                each ->
                    new Line(
                        each,
                        kind(each.kind()),
                        name(people, each.studentId(), "desk.decide.sheet.class"),
                        name(names, each.clothId(), "desk.decide.sheet.no-cloth")))
            .toList());
    loaded.set(true);
    openAgain(found.sheets());
  }

  /** Taken back while it is open, a sheet shows what the book holds. */
  private void openAgain(List<GarmentSheet> sheets) {
    SheetViewModel sheet = open.get();
    GarmentSheet saved = sheet == null ? null : sheet.saved();
    if (sheet == null || saved == null || comparing.get() != null) {
      return;
    }
    sheets.stream()
        .filter(each -> each.id().equals(saved.id()) && !isAt(sheet, each))
        .findFirst()
        .ifPresent(
            now -> {
              sheet.keepDraft();
              open(now);
            });
  }

  private String name(Map<UUID, String> names, @Nullable UUID id, String otherwise) {
    String name = id == null ? null : names.get(id);
    return name == null ? session.words().say(otherwise) : name;
  }

  private String kind(String key) {
    return session.tables().garment().kinds().stream()
        .filter(each -> each.key().equals(key))
        .map(GarmentKind::name)
        .findFirst()
        .orElse(key);
  }
}
