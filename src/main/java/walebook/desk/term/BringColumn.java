package walebook.desk.term;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import walebook.act.bring.match.ColumnMatch;

/** One column of a spreadsheet in hand: what stands over it, some of it, what it is taken for. */
public final class BringColumn {
  private final String letters;
  private final String header;
  private final List<String> samples;
  private final ObjectProperty<String> field;
  private final ObjectProperty<String> unit;

  BringColumn(String letters, String header, List<String> samples, ColumnMatch guess) {
    this.letters = letters;
    this.header = header;
    this.samples = List.copyOf(samples);
    this.field = new SimpleObjectProperty<>(this, "field", guess.field());
    this.unit = new SimpleObjectProperty<>(this, "unit", guess.unit());
  }

  public String letters() {
    return letters;
  }

  public String header() {
    return header;
  }

  public List<String> samples() {
    return samples;
  }

  /** Key of a field; empty for a column that is left out. */
  public ObjectProperty<String> field() {
    return field;
  }

  /** Sign of a unit; empty for the usual one. */
  public ObjectProperty<String> unit() {
    return unit;
  }

  ColumnMatch match() {
    return new ColumnMatch(field.get(), unit.get());
  }
}
