package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CLOTH;
import static walebook.book.jooq.made.Tables.FAULT_SEEN;
import static walebook.book.jooq.made.Tables.STUDENT;
import static walebook.book.jooq.made.Tables.TEST_PIECE;

import java.util.Locale;
import org.jooq.Condition;
import org.jooq.impl.DSL;
import walebook.book.PieceFilter;

/** What a filter means as a condition. */
final class PieceSearch {
  private PieceSearch() {}

  static Condition condition(PieceFilter filter) {
    Condition all = DSL.noCondition();
    if (filter.classId() != null) {
      all = all.and(TEST_PIECE.CLASS_ID.eq(filter.classId()));
    }
    if (filter.lessonId() != null) {
      all = all.and(TEST_PIECE.LESSON_ID.eq(filter.lessonId()));
    }
    if (filter.studentId() != null) {
      all = all.and(TEST_PIECE.STUDENT_ID.eq(filter.studentId()));
    }
    if (filter.clothId() != null) {
      all = all.and(TEST_PIECE.CLOTH_ID.eq(filter.clothId()));
    }
    for (String word : filter.search().strip().split("\\s+")) {
      if (!word.isEmpty()) {
        all = all.and(anywhere(word));
      }
    }
    return all;
  }

  private static Condition anywhere(String word) {
    // A code is often typed with its hyphen.
    String code = word.replace("-", "").toUpperCase(Locale.ROOT);
    return TEST_PIECE
        .CODE
        .contains(code)
        .or(TEST_PIECE.STITCH_NAME.containsIgnoreCase(word))
        .or(TEST_PIECE.STITCH_TYPE.eq(word))
        .or(TEST_PIECE.REMARK.containsIgnoreCase(word))
        .or(
            TEST_PIECE.STUDENT_ID.in(
                DSL.select(STUDENT.ID).from(STUDENT).where(STUDENT.NAME.containsIgnoreCase(word))))
        .or(
            TEST_PIECE.CLOTH_ID.in(
                DSL.select(CLOTH.ID).from(CLOTH).where(CLOTH.NAME.containsIgnoreCase(word))))
        .or(
            DSL.exists(
                DSL.selectOne()
                    .from(FAULT_SEEN)
                    .where(FAULT_SEEN.PIECE_ID.eq(TEST_PIECE.ID))
                    .and(FAULT_SEEN.FAULT.containsIgnoreCase(word))));
  }
}
