package walebook.desk.cloths;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.cloth.ClothCard;
import walebook.act.cloth.ReadClothCard;
import walebook.act.cloth.StartReading;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.desk.common.ToBin;
import walebook.desk.common.Wish;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.TestPiece;

/** The cloths of the room: which is open, and whether it is looked at, changed or measured. */
public final class ClothsViewModel {
  static final String PLACE = "cloths";

  private final Session session;
  private final ReadClothCard read;
  private final ObservableList<ReadClothCard.Line> lines = FXCollections.observableArrayList();
  private final ReadOnlyBooleanWrapper loaded = new ReadOnlyBooleanWrapper(this, "loaded");
  private final ReadOnlyObjectWrapper<Part> part =
      new ReadOnlyObjectWrapper<>(this, "part", Part.LIST);
  private Unit unit = Unit.MM;
  private final ReadOnlyObjectWrapper<@Nullable ClothCard> card =
      new ReadOnlyObjectWrapper<>(this, "card");

  private final ReadOnlyObjectWrapper<StartReading.@Nullable Asked> asked =
      new ReadOnlyObjectWrapper<>(this, "asked");

  /** What the place shows. */
  public enum Part {
    LIST,
    CARD,
    FORM,
    READING,
    WASH
  }

  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);

  private record Read(List<ReadClothCard.Line> lines, Unit unit) {}

  public ClothsViewModel(Session session) {
    this.session = session;
    this.read = new ReadClothCard(session.book(), session.tables());
    session.changesProperty().addListener((from, old, now) -> again());
    session.namesHiddenProperty().addListener((from, old, now) -> again());
    session.wishProperty().addListener((from, old, now) -> grant(now));
    again();
    grant(session.wishProperty().get());
  }

  public Session session() {
    return session;
  }

  ObservableList<ReadClothCard.Line> lines() {
    return lines;
  }

  /** What a length without a unit means in this book. */
  Unit unit() {
    return unit;
  }

  ReadOnlyBooleanProperty loadedProperty() {
    return loaded.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Part> partProperty() {
    return part.getReadOnlyProperty();
  }

  /** The open cloth, or null. */
  public ReadOnlyObjectProperty<@Nullable ClothCard> cardProperty() {
    return card.getReadOnlyProperty();
  }

  /** Opens a cloth's card. */
  public void open(UUID clothId) {
    boolean hidden = session.namesHiddenProperty().get();
    session.run(
        progress -> Optional.ofNullable(read.card(clothId, hidden)),
        found -> {
          card.set(found.orElse(null));
          part.set(found.isPresent() ? Part.CARD : Part.LIST);
        });
  }

  /** Begins a new cloth. */
  public void add() {
    card.set(null);
    part.set(Part.FORM);
  }

  /** Changes the open cloth's card. */
  public void edit() {
    part.set(Part.FORM);
  }

  /** Measures the open cloth. */
  public void measure() {
    asked.set(null);
    part.set(Part.READING);
  }

  /** Logs a wash of the open cloth. */
  public void wash() {
    part.set(Part.WASH);
  }

  /** The planned reading that the form was begun for, or null. */
  public ReadOnlyObjectProperty<StartReading.@Nullable Asked> askedProperty() {
    return asked.getReadOnlyProperty();
  }

  private record Begun(StartReading.Asked asked, ClothCard card) {}

  /** Begins a planned reading; a form that is begun for it stays as it is. */
  public void measure(UUID plannedId) {
    StartReading.Asked now = asked.get();
    if (part.get() == Part.READING && now != null && now.line().planned().id().equals(plannedId)) {
      return;
    }
    boolean hidden = session.namesHiddenProperty().get();
    session.run(
        progress -> {
          StartReading.Asked found = new StartReading(session.book()).of(plannedId);
          ClothCard of = found == null ? null : read.card(found.cloth().id(), hidden);
          return found == null || of == null
              ? Optional.<Begun>empty()
              : Optional.of(new Begun(found, of));
        },
        found -> {
          if (found.isEmpty()) {
            notice.set(new Notice(session.words().say("desk.cloths.reading.gone"), null));
            return;
          }
          card.set(found.get().card());
          asked.set(found.get().asked());
          part.set(Part.READING);
        });
  }

  /** Leads back to where the plan is. */
  void toToday() {
    part.set(Part.CARD);
    session.wish(Wish.show("today"));
  }

  /** Back from form or reading to the card, from there to the list. */
  public void back() {
    boolean toCard = part.get() != Part.CARD && card.get() != null;
    if (!toCard) {
      card.set(null);
    }
    part.set(toCard ? Part.CARD : Part.LIST);
  }

  /** What came of putting something in the bin. */
  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** Puts the open cloth in the bin; one that is in use stays, and it is said why. */
  public void binCloth() {
    ClothCard open = card.get();
    if (open != null) {
      new ToBin(session)
          .put(
              "cloth",
              open.cloth().id(),
              notice::set,
              () -> {
                card.set(null);
                part.set(Part.LIST);
              });
    }
  }

  /** Puts a reading of the open cloth in the bin. */
  public void binReading(UUID readingId) {
    new ToBin(session).put("cloth_reading", readingId, notice::set, () -> {});
  }

  /** Puts a wash of the open cloth in the bin. */
  public void binWash(UUID washId) {
    new ToBin(session).put("cloth_wash", washId, notice::set, () -> {});
  }

  /** Shows the card of a cloth that was just saved. */
  void saved(Cloth cloth) {
    session.changed();
    open(cloth.id());
  }

  /** Shows a piece in its own place. */
  void openPiece(TestPiece piece) {
    session.wish(new Wish("pieces", Wish.What.OPEN, piece.id()));
  }

  private void again() {
    session.run(
        progress -> new Read(read.list(), session.book().info().lengthUnit()),
        found -> {
          lines.setAll(found.lines());
          unit = found.unit();
          loaded.set(true);
        });
    ClothCard open = card.get();
    if (open != null) {
      boolean hidden = session.namesHiddenProperty().get();
      session.run(
          progress -> Optional.ofNullable(read.card(open.cloth().id(), hidden)),
          found -> card.set(found.orElse(open)));
    }
  }

  private void grant(@Nullable Wish wish) {
    if (wish == null || !wish.place().equals(PLACE)) {
      return;
    }
    UUID id = wish.id();
    if (wish.what() == Wish.What.OPEN && id != null) {
      open(id);
    } else if (wish.what() == Wish.What.LOG_PLANNED && id != null) {
      measure(id);
    }
  }
}
