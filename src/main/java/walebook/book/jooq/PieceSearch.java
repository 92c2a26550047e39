package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CLOTH;
import static walebook.book.jooq.made.Tables.FAULT_SEEN;
import static walebook.book.jooq.made.Tables.STUDENT;
import static walebook.book.jooq.made.Tables.TEST_PIECE;

import java.util.Locale;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import walebook.book.PieceFilter;

/** What a filter means as a condition. */
final class PieceSearch {
  private PieceSearch() {}

  static Condition condition(PieceFilter filter) {
    Condition all = within(filter.lessonId(), filter.studentId(), filter.clothId());
    if (filter.classId() != null) {
      all = all.and(TEST_PIECE.CLASS_ID.eq(filter.classId()));
    }
    for (String word : filter.search().strip().split("\\s+")) {
      if (!word.isEmpty()) {
        all = all.and(anywhere(word));
      }
    }
    return all;
  }

  /** Pieces of a lesson, a student, a cloth; null for any. */
  static Condition within(@Nullable UUID lesson, @Nullable UUID student, @Nullable UUID cloth) {
    Condition all = DSL.noCondition();
    if (lesson != null) {
      all = all.and(TEST_PIECE.LESSON_ID.eq(lesson));
    }
    if (student != null) {
      all = all.and(TEST_PIECE.STUDENT_ID.eq(student));
    }
    if (cloth != null) {
      all = all.and(TEST_PIECE.CLOTH_ID.eq(cloth));
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
