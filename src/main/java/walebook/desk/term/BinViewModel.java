package walebook.desk.term;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import walebook.act.history.SayChange;
import walebook.act.history.UseBin;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;

/** The bin: what lies in it, taking a thing out, emptying it at the second press. */
public final class BinViewModel {
  private final Session session;
  private final ObservableList<UseBin.Item> items = FXCollections.observableArrayList();
  private final ReadOnlyBooleanWrapper emptying = new ReadOnlyBooleanWrapper(this, "emptying");
  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);

  public BinViewModel(Session session) {
    this.session = session;
    session
        .changesProperty()
        .addListener(
            (from, old, now) -> {
              // What was said may not be so any more, as when it is taken back.
              notice.set(Notice.NONE);
              read();
            });
    session.namesHiddenProperty().addListener((from, old, now) -> read());
    read();
  }

  public ObservableList<UseBin.Item> items() {
    return items;
  }

  /** True once emptying was asked for and not yet confirmed. */
  public ReadOnlyBooleanProperty emptyingProperty() {
    return emptying.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  private UseBin act() {
    boolean hidden = session.namesHiddenProperty().get();
    return new UseBin(session.book(), new SayChange(session.book(), session.words(), hidden));
  }

  private void read() {
    UseBin act = act();
    session.run(progress -> act.all(), items::setAll);
  }

  /** Takes a thing out, back to where it was. */
  public void restore(UseBin.Item item) {
    emptying.set(false);
    session.run(
        progress -> act().restore(item.id(), session.by()),
        answer -> {
          session.changed();
          say(
              answer.isGood()
                  ? session.words().say("desk.common.bin.back", item.what())
                  : session.words().say(answer.problems().get(0)));
        });
  }

  /** Empties the bin for good at the second call. */
  public void empty() {
    if (!emptying.get()) {
      emptying.set(!items.isEmpty());
      return;
    }
    emptying.set(false);
    session.run(
        progress -> act().empty(session.by()),
        gone -> {
          session.changed();
          say(session.words().say("desk.term.bin.emptied", gone));
        });
  }

  private void say(String sentence) {
    notice.set(new Notice(sentence, null));
  }
}
