package walebook.desk.term;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import walebook.desk.common.PickFile;
import walebook.desk.common.Session;
import walebook.record.SchoolClass;

/** Writing the term's workbook: with names or codes, where, and how it went. */
public final class ExportViewModel {
  private final Session session;
  private final TermExport export;
  private final ObjectProperty<Shown> shown;
  private final ReadOnlyBooleanWrapper writing = new ReadOnlyBooleanWrapper(this, "writing");
  private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper(this, "says", "");

  /** How students appear in the workbook. */
  public enum Shown {
    CODES,
    NAMES
  }

  public ExportViewModel(Session session, TermExport export) {
    this.session = session;
    this.export = export;
    shown = new SimpleObjectProperty<>(this, "shown", Shown.CODES);
  }

  public ObjectProperty<Shown> shownProperty() {
    return shown;
  }

  public ReadOnlyBooleanProperty writingProperty() {
    return writing.getReadOnlyProperty();
  }

  /** Where it was written, or why not; empty before. */
  public ReadOnlyStringProperty saysProperty() {
    return says.getReadOnlyProperty();
  }

  /** Asks where, then writes. */
  public void export() {
    SchoolClass of = session.schoolClassProperty().get();
    if (of == null || writing.get()) {
      return;
    }
    Path file = session.files().save(PickFile.Kind.WORKBOOK, fileName(of.name()));
    if (file == null) {
      return;
    }
    boolean names = shown.get() == Shown.NAMES;
    writing.set(true);
    says.set(session.words().say("desk.term.export.writing"));
    session
        .background()
        .run(
            progress -> export.export(file, of.id(), names),
            written -> end("desk.term.export.written", written),
            fault -> failed(file, fault));
  }

  private void failed(Path file, Throwable fault) {
    if (fault instanceof IOException) {
      end("desk.term.export.failed", file);
    } else {
      writing.set(false);
      says.set("");
      session.unexpected(fault);
    }
  }

  private void end(String key, Path file) {
    writing.set(false);
    says.set(session.words().say(key, file));
  }

  private static String fileName(String className) {
    String plain = className.replaceAll("[^\\p{L}\\p{N}]+", "-").toLowerCase(Locale.ROOT);
    String trimmed = plain.replaceAll("^-|-$", "");
    return (trimmed.isEmpty() ? "class" : trimmed) + ".xlsx";
  }
}
