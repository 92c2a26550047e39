package walebook.desk.settings;

import java.util.Map;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import walebook.act.book.KeepBook;
import walebook.desk.common.FormFields;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.quantity.Unit;
import walebook.record.BookInfo;

/** What the book is called, the unit it works in, and whether names are hidden. */
public final class SettingsViewModel {
  private final Session session;
  private final KeepBook act;
  private final FormFields fields = new FormFields(() -> {}, "book-name");
  private final ObjectProperty<Unit> unit = new SimpleObjectProperty<>(this, "unit", Unit.MM);
  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);

  public SettingsViewModel(Session session) {
    this.session = session;
    this.act = new KeepBook(session.book(), session.clock());
    session.run(progress -> session.book().info(), this::show);
  }

  public FormFields fields() {
    return fields;
  }

  /** The unit that a length without one means: mm, cm or in. */
  public ObjectProperty<Unit> unitProperty() {
    return unit;
  }

  public BooleanProperty namesHiddenProperty() {
    return session.namesHiddenProperty();
  }

  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  public void save() {
    String name = fields.text("book-name");
    Unit chosen = unit.get();
    session.run(
        progress -> act.keep(name, chosen),
        answer -> {
          fields.show(answer.problems());
          if (answer.isGood()) {
            notice.set(new Notice(session.words().say("desk.settings.saved"), null));
            session.changed();
          }
        });
  }

  private void show(BookInfo info) {
    fields.put(Map.of("book-name", info.name()));
    unit.set(info.lengthUnit());
  }
}
