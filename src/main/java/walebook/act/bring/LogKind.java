package walebook.act.bring;

import java.util.List;
import walebook.problem.Answer;

/**
 * One kind of record that stands in a row by itself.
 *
 * @param <T> the record
 */
interface LogKind<T> {
  /** The record of a row, checked as its form checks it; problems of cells stay with the cells. */
  Answer<T> read(CellReader cells);

  /** What the row is about, for whoever reads of its fate. */
  String about(CellReader cells);

  /** The column that a field of the form is read from. */
  default String column(String formField) {
    return formField;
  }

  /** Those that the book has. */
  List<T> there();

  /** Whether any number of rows alike is one record, rather than each a record of its own. */
  default boolean isOneForAllAlike() {
    return false;
  }

  /** Everything but key and stamp: two alike are one. */
  Object likeness(T found);

  void save(T found);
}
