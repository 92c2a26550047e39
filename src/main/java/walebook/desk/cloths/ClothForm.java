package walebook.desk.cloths;

import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.FormFields;
import walebook.desk.common.KeptForm;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.problem.Answer;
import walebook.quantity.Unit;

/** A form of something measured on a cloth: its fields, its draft, and what was said of a save. */
abstract class ClothForm {
  final Session session;
  final FormFields fields;
  final KeptForm kept;
  final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);
  private Unit unit = Unit.MM;
  private @Nullable UUID clothId;

  /**
   * An empty form.
   *
   * @param draft its name among the drafts
   */
  ClothForm(Session session, String draft, String... names) {
    this.session = session;
    fields = new FormFields(this::typed, names);
    kept = new KeptForm(session, draft, fields);
  }

  /** Works out anew what the form means. */
  abstract void changed();

  private void typed() {
    kept.changed();
    changed();
  }

  public final FormFields fields() {
    return fields;
  }

  public final ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** Keeps what is typed as a draft. */
  public final KeptForm kept() {
    return kept;
  }

  /** The unit in which a bare number is a length. */
  final Unit unit() {
    return unit;
  }

  final @Nullable UUID clothId() {
    return clothId;
  }

  /** Goes on to a cloth; what is typed from here on is measured on it. */
  final void take(UUID cloth, Unit lengthUnit) {
    clothId = cloth;
    unit = lengthUnit;
    notice.set(Notice.NONE);
  }

  /** A length in millimetres, or null where none can be read. */
  final @Nullable Double length(String field) {
    return fields.length(field, unit);
  }

  /** False when the form went on to another while this one was saved, which leaves no draft. */
  final boolean isStill(String owner, Answer<?> answer) {
    if (owner.equals(kept.owner())) {
      return true;
    }
    if (answer.isGood()) {
      kept.drop(owner);
    }
    session.changed();
    return false;
  }
}
