package walebook.desk.term;

import java.nio.file.Path;
import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.bring.ReadSpreadsheet;
import walebook.act.bring.Spreadsheet;
import walebook.act.bring.SpreadsheetFile;
import walebook.act.bring.match.BringWhat;
import walebook.act.bring.match.ColumnMatch;
import walebook.desk.common.PickFile;
import walebook.desk.common.Session;
import walebook.problem.Problem;

/** A spreadsheet in hand: which file and sheet, and what its columns hold. */
public final class BringViewModel {
  private static final int SAMPLES = 3;

  private final Session session;
  private final ReadSpreadsheet read;
  private final BringWork work;
  private final BringRowsViewModel rows;
  private final ObjectProperty<BringWhat> what =
      new SimpleObjectProperty<>(this, "what", BringWhat.PIECES);
  private final ObservableList<String> sheets = FXCollections.observableArrayList();
  private final ObjectProperty<@Nullable String> sheet = new SimpleObjectProperty<>(this, "sheet");
  private final ObservableList<BringColumn> columns = FXCollections.observableArrayList();
  private final ObservableList<String> remarks = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<@Nullable SpreadsheetFile> file =
      new ReadOnlyObjectWrapper<>(this, "file");
  private final ReadOnlyObjectWrapper<@Nullable Spreadsheet> inHand =
      new ReadOnlyObjectWrapper<>(this, "inHand");

  private record Guessed(Spreadsheet sheet, List<ColumnMatch> columns) {}

  public BringViewModel(Session session) {
    this.session = session;
    this.read = new ReadSpreadsheet(session.book(), session.words());
    this.work = new BringWork(session);
    this.rows = new BringRowsViewModel(session, this, work);
    what.addListener((from, old, now) -> openAgain());
    sheet.addListener((from, old, now) -> readSheet());
  }

  /** What becomes of the rows. */
  public BringRowsViewModel rows() {
    return rows;
  }

  public ObjectProperty<BringWhat> whatProperty() {
    return what;
  }

  public ReadOnlyObjectProperty<@Nullable SpreadsheetFile> fileProperty() {
    return file.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<@Nullable Spreadsheet> inHandProperty() {
    return inHand.getReadOnlyProperty();
  }

  public ObservableList<String> sheets() {
    return sheets;
  }

  public ObjectProperty<@Nullable String> sheetProperty() {
    return sheet;
  }

  public ObservableList<BringColumn> columns() {
    return columns;
  }

  /** What was passed over or taken another way than it looks. */
  public ObservableList<String> remarks() {
    return remarks;
  }

  /** What is in the way; empty when nothing is. */
  public ReadOnlyStringProperty saysProperty() {
    return work.says.getReadOnlyProperty();
  }

  public ReadOnlyBooleanProperty workingProperty() {
    return work.working.getReadOnlyProperty();
  }

  /** Asks for a file and opens it. */
  public void choose() {
    Path chosen = session.files().open(PickFile.Kind.TABLE);
    if (chosen != null) {
      open(chosen);
    }
  }

  private void openAgain() {
    SpreadsheetFile now = file.get();
    if (now != null) {
      open(now.path());
    }
  }

  private void open(Path path) {
    BringWhat of = what.get();
    work.start(
        () -> read.open(path, of),
        found -> {
          sheet.set(null);
          file.set(found);
          sheets.setAll(found.sheets());
          sheet.set(found.usual());
        },
        () -> {
          String said = work.says.get();
          sheet.set(null);
          file.set(null);
          sheets.clear();
          work.says.set(said);
        });
  }

  private void readSheet() {
    rows.untried();
    SpreadsheetFile from = file.get();
    String name = sheet.get();
    BringWhat of = what.get();
    columns.clear();
    remarks.clear();
    inHand.set(null);
    if (from == null || name == null) {
      return;
    }
    work.start(
        () -> read.read(from, name, of).map(found -> new Guessed(found, read.guess(found, of))),
        guessed -> {
          if (name.equals(sheet.get())) {
            show(guessed, from);
          }
        },
        () -> {});
  }

  private void show(Guessed guessed, SpreadsheetFile from) {
    Spreadsheet found = guessed.sheet();
    for (Problem each : from.remarks()) {
      remarks.add(session.words().say(each));
    }
    for (Problem each : found.remarks()) {
      String said = session.words().say(each);
      if (!remarks.contains(said)) {
        remarks.add(said);
      }
    }
    for (int i = 0; i < guessed.columns().size(); i++) {
      BringColumn column =
          new BringColumn(
              Spreadsheet.letters(i),
              found.headers().get(i),
              found.samples(i, SAMPLES),
              guessed.columns().get(i));
      column.field().addListener((of, old, now) -> rows.untried());
      column.unit().addListener((of, old, now) -> rows.untried());
      columns.add(column);
    }
    inHand.set(found);
  }
}
