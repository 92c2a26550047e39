package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.BANK_COMMENT;
import static walebook.book.jooq.made.Tables.CRITERION;
import static walebook.book.jooq.made.Tables.CRITERION_TAG;
import static walebook.book.jooq.made.Tables.FEEDBACK;
import static walebook.book.jooq.made.Tables.PIECE_CHECK;
import static walebook.book.jooq.made.Tables.TEST_PIECE;

import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.TableRecord;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import walebook.book.Assessments;
import walebook.book.Ids;
import walebook.book.jooq.made.tables.records.BankCommentRecord;
import walebook.book.jooq.made.tables.records.CriterionTagRecord;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.CriterionTag;
import walebook.record.Feedback;
import walebook.record.PieceCheck;
import walebook.record.RecordTally;
import walebook.record.Stamp;

/** Criteria, checks and feedback as rows; each change is written into the history with it. */
record JooqAssessments(Access access, Clock clock) implements Assessments {

  @Override
  public List<Criterion> criteriaOf(UUID classId) {
    return access.read(
        dsl ->
            dsl.selectFrom(CRITERION)
                .where(CRITERION.CLASS_ID.eq(classId))
                .orderBy(CRITERION.PLACE, CRITERION.CODE)
                .fetch()
                .map(AssessmentRows::criterion));
  }

  @Override
  public void keep(Criterion criterion) {
    keep(AssessmentRows.row(criterion), criterion.stamp());
  }

  private <R extends TableRecord<R>> void keep(R row, Stamp stamp) {
    if (stamp.version() == 1) {
      access.insert(row);
    } else {
      access.update(row);
    }
  }

  /** Deletes the rows that meet a condition, each noted in the history. */
  private <R extends TableRecord<R>> void delete(Table<R> table, Condition which) {
    access.write(
        dsl -> {
          for (UUID id :
              dsl.select(Rows.id(table)).from(table).where(which).fetch(Rows.id(table))) {
            access.changing(table, id, Recorder.As.PLAIN);
            dsl.deleteFrom(table).where(Rows.id(table).eq(id)).execute();
          }
          return table;
        });
  }

  @Override
  public void remove(UUID criterionId) {
    access.write(
        dsl -> {
          delete(CRITERION_TAG, CRITERION_TAG.CRITERION_ID.eq(criterionId));
          delete(CRITERION, CRITERION.ID.eq(criterionId));
          return criterionId;
        });
  }

  @Override
  public List<CriterionTag> tagsOf(UUID classId) {
    return access.read(
        dsl ->
            dsl.select(CRITERION_TAG.fields())
                .from(CRITERION_TAG)
                .join(CRITERION)
                .on(CRITERION.ID.eq(CRITERION_TAG.CRITERION_ID))
                .where(CRITERION.CLASS_ID.eq(classId))
                .fetch(
                    row ->
                        new CriterionTag(
                            row.get(CRITERION_TAG.CRITERION_ID),
                            row.get(CRITERION_TAG.PIECE_ID),
                            row.get(CRITERION_TAG.LESSON_ID))));
  }

  @Override
  public void tag(CriterionTag tag) {
    access.write(
        dsl -> {
          if (!dsl.fetchExists(CRITERION_TAG, same(tag))) {
            CriterionTagRecord row =
                Rows.stamped(new CriterionTagRecord(), Ids.next(), Stamp.fresh(clock.instant()));
            row.setCriterionId(tag.criterionId());
            row.setPieceId(tag.pieceId());
            row.setLessonId(tag.lessonId());
            access.insert(row);
          }
          return tag;
        });
  }

  @Override
  public void untag(CriterionTag tag) {
    delete(CRITERION_TAG, same(tag));
  }

  private static Condition same(CriterionTag tag) {
    Condition on =
        tag.pieceId() == null
            ? CRITERION_TAG.LESSON_ID.eq(tag.lessonId())
            : CRITERION_TAG.PIECE_ID.eq(tag.pieceId());
    return CRITERION_TAG.CRITERION_ID.eq(tag.criterionId()).and(on);
  }

  @Override
  public @Nullable PieceCheck check(UUID pieceId, CheckedBy by) {
    List<PieceCheck> found =
        checks(PIECE_CHECK.PIECE_ID.eq(pieceId).and(PIECE_CHECK.CHECKED_BY.eq(by.key())));
    return found.isEmpty() ? null : found.get(0);
  }

  @Override
  public List<PieceCheck> checksOf(UUID classId) {
    return checks(ofClass(PIECE_CHECK.PIECE_ID, classId));
  }

  private List<PieceCheck> checks(Condition which) {
    return access.read(
        dsl ->
            dsl.selectFrom(PIECE_CHECK)
                .where(which)
                .orderBy(PIECE_CHECK.PIECE_ID, PIECE_CHECK.CHECKED_BY)
                .fetch()
                .map(AssessmentRows::check));
  }

  /** Asked of each row, since a class may have many more pieces than were ever looked over. */
  private static Condition ofClass(Field<UUID> pieceId, UUID classId) {
    return DSL.exists(
        DSL.selectOne()
            .from(TEST_PIECE)
            .where(TEST_PIECE.ID.eq(pieceId))
            .and(TEST_PIECE.CLASS_ID.eq(classId)));
  }

  @Override
  public void keep(PieceCheck check) {
    keep(AssessmentRows.row(check), check.stamp());
  }

  @Override
  public List<Feedback> feedbackOn(UUID pieceId) {
    return feedback(FEEDBACK.PIECE_ID.eq(pieceId));
  }

  @Override
  public List<Feedback> feedbackOf(UUID classId) {
    return feedback(ofClass(FEEDBACK.PIECE_ID, classId));
  }

  private List<Feedback> feedback(Condition which) {
    return access.read(
        dsl ->
            dsl.selectFrom(FEEDBACK)
                .where(which)
                .orderBy(FEEDBACK.GIVEN_ON, FEEDBACK.ID)
                .fetch()
                .map(AssessmentRows::feedback));
  }

  @Override
  public RecordTally tallyOf(UUID classId) {
    return access.read(
        dsl -> {
          ClassTally pieces = ClassTally.of(dsl, TEST_PIECE, TEST_PIECE.CLASS_ID.eq(classId));
          ClassTally checks =
              ClassTally.of(dsl, PIECE_CHECK, ofClass(PIECE_CHECK.PIECE_ID, classId));
          ClassTally comments = ClassTally.of(dsl, FEEDBACK, ofClass(FEEDBACK.PIECE_ID, classId));
          Instant last =
              Stream.of(pieces, checks, comments)
                  .map(ClassTally::last)
                  .filter(Objects::nonNull)
                  .max(Comparator.naturalOrder())
                  .orElse(null);
          return new RecordTally(pieces.count(), checks.count(), comments.count(), last);
        });
  }

  @Override
  public Set<UUID> spokenOf(UUID classId) {
    return new HashSet<>(
        access.read(
            dsl ->
                dsl.selectDistinct(FEEDBACK.PIECE_ID)
                    .from(FEEDBACK)
                    .where(ofClass(FEEDBACK.PIECE_ID, classId))
                    .fetch(FEEDBACK.PIECE_ID)));
  }

  @Override
  public void add(Feedback feedback) {
    keep(AssessmentRows.row(feedback), feedback.stamp());
  }

  @Override
  public List<String> bank() {
    return access.read(
        dsl ->
            dsl.select(BANK_COMMENT.SAYS)
                .from(BANK_COMMENT)
                .orderBy(BANK_COMMENT.CREATED_AT.desc(), BANK_COMMENT.ID.desc())
                .fetch(BANK_COMMENT.SAYS));
  }

  @Override
  public void bank(String says) {
    access.write(
        dsl -> {
          if (!known(dsl, says)) {
            BankCommentRecord row =
                Rows.stamped(new BankCommentRecord(), Ids.next(), Stamp.fresh(clock.instant()));
            row.setSays(says);
            access.insert(row);
          }
          return says;
        });
  }

  private static boolean known(DSLContext dsl, String says) {
    return dsl.fetchExists(BANK_COMMENT, BANK_COMMENT.SAYS.eq(says));
  }

  @Override
  public void unbank(String says) {
    delete(BANK_COMMENT, BANK_COMMENT.SAYS.eq(says));
  }
}
