package walebook.desk.common;

import java.util.HashMap;
import java.util.Map;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import org.jspecify.annotations.Nullable;
import walebook.act.KeepTyped;

/** Keeps what is typed in a form as a draft of its owner, and brings it back. */
public final class KeptForm {
  private final Session session;
  private final KeepTyped drafts;
  private final FormFields fields;
  private final ReadOnlyIntegerWrapper edits = new ReadOnlyIntegerWrapper(this, "edits");
  private Map<String, String> usual = Map.of();
  private @Nullable String owner;
  private int kept;
  private boolean filling;

  /**
   * Keeps a form.
   *
   * @param form its name among the drafts
   */
  public KeptForm(Session session, String form, FormFields fields) {
    this.session = session;
    this.drafts = new KeepTyped(session.book(), form);
    this.fields = fields;
  }

  /** Counts what a person typed; kept a moment after it last moved. */
  public ReadOnlyIntegerProperty editsProperty() {
    return edits.getReadOnlyProperty();
  }

  /** Whose form it is, so that an answer can tell whether it still is; empty before it is begun. */
  public String owner() {
    return owner == null ? "" : owner;
  }

  /** Told by the form of each change. */
  public void changed() {
    if (!filling) {
      edits.set(edits.get() + 1);
    }
  }

  /**
   * Fills the form for an owner: with the draft where there is one, else with what is usual.
   *
   * @param whatIsUsual stands in an untouched form, and is no draft
   */
  public void begin(String of, Map<String, String> whatIsUsual) {
    keep();
    owner = of;
    usual = Map.copyOf(whatIsUsual);
    fill(usual);
    int now = edits.get();
    session.run(
        progress -> drafts.find(of),
        draft -> {
          if (!draft.isEmpty() && of.equals(owner) && edits.get() == now) {
            Map<String, String> both = new HashMap<>(usual);
            both.putAll(draft);
            fill(both);
          }
        });
  }

  /** Keeps what was typed since it was last kept. */
  public void keep() {
    String of = owner;
    if (of != null && kept != edits.get()) {
      kept = edits.get();
      Map<String, String> typed = typed();
      session.run(
          progress -> {
            drafts.keep(of, typed);
            return of;
          },
          done -> {});
    }
  }

  /** Keeps it at once; called before the book is closed. */
  public void rest() {
    if (owner != null && kept != edits.get()) {
      kept = edits.get();
      drafts.keep(owner, typed());
    }
  }

  /** Lets the draft go once it is saved, or thrown away on purpose, and fills the form anew. */
  public void done(Map<String, String> next) {
    usual = Map.copyOf(next);
    fill(next);
    kept = edits.get();
    if (owner != null) {
      drop(owner);
    }
  }

  /** Lets the draft go of one who was saved while the form went on to another. */
  public void drop(String of) {
    session.run(
        progress -> {
          drafts.drop(of);
          return of;
        },
        gone -> {});
  }

  private Map<String, String> typed() {
    Map<String, String> typed = fields.typed();
    boolean untouched =
        typed.entrySet().stream()
            .allMatch(each -> each.getValue().equals(usual.getOrDefault(each.getKey(), "")));
    return untouched ? Map.of() : typed;
  }

  private void fill(Map<String, String> values) {
    filling = true;
    fields.put(values);
    filling = false;
  }
}
