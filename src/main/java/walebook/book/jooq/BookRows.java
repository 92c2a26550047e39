package walebook.book.jooq;

import walebook.book.jooq.made.tables.records.BookInfoRecord;
import walebook.quantity.Unit;
import walebook.record.BookInfo;

/** The row that says what the book is called. */
final class BookRows {
  private BookRows() {}

  static BookInfoRecord row(BookInfo info) {
    BookInfoRecord row = Rows.stamped(new BookInfoRecord(), info.id(), info.stamp());
    row.setName(info.name());
    row.setIsInvented(info.invented());
    row.setLengthUnit(info.lengthUnit().sign());
    return row;
  }

  static BookInfo info(BookInfoRecord row) {
    return new BookInfo(
        row.getId(),
        row.getName(),
        row.getIsInvented(),
        unit(row.getLengthUnit()),
        Rows.stamp(row));
  }

  private static Unit unit(String sign) {
    return switch (sign) {
      case "cm" -> Unit.CM;
      case "in" -> Unit.INCH;
      default -> Unit.MM;
    };
  }
}
