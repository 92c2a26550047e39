package walebook.book.jooq;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.jooq.made.tables.records.CriterionRecord;
import walebook.book.jooq.made.tables.records.FeedbackRecord;
import walebook.book.jooq.made.tables.records.PieceCheckRecord;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.Feedback;
import walebook.record.Help;
import walebook.record.Keyed;
import walebook.record.Marking;
import walebook.record.PieceCheck;

/** Criteria, checks and feedback to rows and back. */
final class AssessmentRows {
  private AssessmentRows() {}

  static CriterionRecord row(Criterion criterion) {
    CriterionRecord row = Rows.stamped(new CriterionRecord(), criterion.id(), criterion.stamp());
    row.setClassId(criterion.classId());
    row.setCode(criterion.code());
    row.setSays(criterion.says());
    row.setPlace((long) criterion.place());
    row.setMarksLookedAt(criterion.looksAtAll() ? null : flags(criterion.looksAt()));
    return row;
  }

  private static long flags(Set<Marking> marks) {
    return marks.stream().mapToLong(AssessmentRows::flag).sum();
  }

  private static Set<Marking> marks(@Nullable Long flags) {
    return flags == null
        ? Criterion.ALL
        : Criterion.ALL.stream()
            .filter(each -> (flags & flag(each)) != 0)
            .collect(Collectors.toSet());
  }

  /** As the file has it, whatever becomes of the order of the marks. */
  private static long flag(Marking marking) {
    return switch (marking) {
      case CHOICE -> 1;
      case TECHNIQUE -> 2;
      case PERFORMANCE -> 4;
      case FINISH -> 8;
      case REASONING -> 16;
    };
  }

  static Criterion criterion(CriterionRecord row) {
    return new Criterion(
        row.getId(),
        row.getClassId(),
        row.getCode(),
        row.getSays(),
        Math.toIntExact(row.getPlace()),
        marks(row.getMarksLookedAt()),
        Rows.stamp(row));
  }

  static PieceCheckRecord row(PieceCheck check) {
    PieceCheckRecord row = Rows.stamped(new PieceCheckRecord(), check.id(), check.stamp());
    row.setPieceId(check.pieceId());
    row.setCheckedBy(check.by().key());
    row.setChoiceMark(Rows.whole(check.mark(Marking.CHOICE)));
    row.setTechniqueMark(Rows.whole(check.mark(Marking.TECHNIQUE)));
    row.setPerformanceMark(Rows.whole(check.mark(Marking.PERFORMANCE)));
    row.setFinishMark(Rows.whole(check.mark(Marking.FINISH)));
    row.setReasoningMark(Rows.whole(check.mark(Marking.REASONING)));
    row.setHelpGiven(check.help() == null ? null : check.help().key());
    row.setCheckedOn(check.checkedOn());
    return row;
  }

  static PieceCheck check(PieceCheckRecord row) {
    Map<Marking, Integer> marks = new EnumMap<>(Marking.class);
    put(marks, Marking.CHOICE, row.getChoiceMark());
    put(marks, Marking.TECHNIQUE, row.getTechniqueMark());
    put(marks, Marking.PERFORMANCE, row.getPerformanceMark());
    put(marks, Marking.FINISH, row.getFinishMark());
    put(marks, Marking.REASONING, row.getReasoningMark());
    return new PieceCheck(
        row.getId(),
        row.getPieceId(),
        Keyed.of(CheckedBy.class, row.getCheckedBy()),
        marks,
        Keyed.find(Help.class, row.getHelpGiven()),
        row.getCheckedOn(),
        Rows.stamp(row));
  }

  private static void put(Map<Marking, Integer> marks, Marking marking, @Nullable Long mark) {
    if (mark != null) {
      marks.put(marking, Math.toIntExact(mark));
    }
  }

  static FeedbackRecord row(Feedback feedback) {
    FeedbackRecord row = Rows.stamped(new FeedbackRecord(), feedback.id(), feedback.stamp());
    row.setPieceId(feedback.pieceId());
    row.setGivenOn(feedback.givenOn());
    row.setSays(feedback.says());
    row.setMadeBy(feedback.madeBy());
    return row;
  }

  static Feedback feedback(FeedbackRecord row) {
    return new Feedback(
        row.getId(),
        row.getPieceId(),
        row.getGivenOn(),
        row.getSays(),
        row.getMadeBy(),
        Rows.stamp(row));
  }
}
