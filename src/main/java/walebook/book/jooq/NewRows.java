package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CLASS_STUDENT;
import static walebook.book.jooq.made.Tables.STUDENT;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.TableRecord;
import walebook.book.History;
import walebook.book.StaleRow;

/** What a row that was just added looks like with all that hangs on it, its own first. */
final class NewRows {
  private NewRows() {}

  static List<TableRecord<?>> of(DSLContext dsl, History.Made kind, UUID id) {
    return switch (kind) {
      case PIECE -> JooqPieces.stored(dsl, id);
      case STUDENT -> student(dsl, id);
    };
  }

  private static List<TableRecord<?>> student(DSLContext dsl, UUID id) {
    List<TableRecord<?>> rows = new ArrayList<>();
    rows.addAll(dsl.selectFrom(STUDENT).where(STUDENT.ID.eq(id)).fetch());
    if (rows.isEmpty()) {
      throw new StaleRow(STUDENT.getName(), id);
    }
    rows.addAll(dsl.selectFrom(CLASS_STUDENT).where(CLASS_STUDENT.STUDENT_ID.eq(id)).fetch());
    return rows;
  }
}
