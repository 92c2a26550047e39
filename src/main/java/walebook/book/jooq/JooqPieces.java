package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.FAULT_SEEN;
import static walebook.book.jooq.made.Tables.PIECE_PULL;
import static walebook.book.jooq.made.Tables.TEST_PIECE;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record1;
import org.jooq.Select;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import walebook.book.PieceFilter;
import walebook.book.PieceOrder;
import walebook.book.Pieces;
import walebook.book.ResultFilter;
import walebook.book.jooq.made.tables.records.TestPieceRecord;
import walebook.record.By;
import walebook.record.FaultSeen;
import walebook.record.Grain;
import walebook.record.PullReading;
import walebook.record.TestPiece;

/** Test pieces with their pulls and faults. */
record JooqPieces(Access access) implements Pieces {

  @Override
  public void add(TestPiece piece) {
    TestPieceRecord row = PieceRows.row(piece);
    if (PiecePartRows.none(piece)) {
      access.insert(row);
      return;
    }
    access.write(
        dsl -> {
          access.insert(row);
          PiecePartRows.of(piece).forEach(access::insert);
          return piece;
        });
  }

  @Override
  public void update(TestPiece piece) {
    update(piece, Recorder.As.PLAIN);
  }

  @Override
  public void update(TestPiece piece, By by, String act, UUID stepId) {
    update(piece, new Recorder.As(by, act, stepId));
  }

  private void update(TestPiece piece, Recorder.As as) {
    access.write(
        dsl -> {
          access.changing(TEST_PIECE, piece.id(), as);
          Rows.update(dsl, PieceRows.row(piece));
          dsl.deleteFrom(PIECE_PULL).where(PIECE_PULL.PIECE_ID.eq(piece.id())).execute();
          dsl.deleteFrom(FAULT_SEEN).where(FAULT_SEEN.PIECE_ID.eq(piece.id())).execute();
          PiecePartRows.of(piece).forEach(access::insert);
          return piece;
        });
  }

  @Override
  public @Nullable TestPiece find(UUID id) {
    return one(TEST_PIECE.ID.eq(id));
  }

  @Override
  public @Nullable TestPiece byCode(String code) {
    return one(TEST_PIECE.CODE.eq(code));
  }

  private @Nullable TestPiece one(Condition which) {
    List<TestPiece> found = access.read(dsl -> fetch(dsl, which, 1, 0));
    return found.isEmpty() ? null : found.get(0);
  }

  @Override
  public PieceOrder inOrder(
      ResultFilter filter, Set<UUID> students, Set<UUID> lessons, boolean aliases) {
    Condition which =
        JooqResults.condition(filter)
            .and(students.isEmpty() ? DSL.noCondition() : TEST_PIECE.STUDENT_ID.in(students))
            .and(lessons.isEmpty() ? DSL.noCondition() : TEST_PIECE.LESSON_ID.in(lessons));
    return JooqPieceOrder.of(access, which, aliases);
  }

  @Override
  public Map<UUID, String> codes(Collection<UUID> ids) {
    return access.read(
        dsl ->
            dsl.select(TEST_PIECE.ID, TEST_PIECE.CODE)
                .from(TEST_PIECE)
                .where(TEST_PIECE.ID.in(keys(ids)))
                .fetchMap(TEST_PIECE.ID, TEST_PIECE.CODE));
  }

  /** Keys as one list of JSON: a statement with hundreds of marks takes longer than the rows. */
  private static Select<Record1<UUID>> keys(Collection<UUID> ids) {
    String all =
        ids.stream()
            .map(id -> '"' + id.toString() + '"')
            .collect(Collectors.joining(",", "[", "]"));
    return DSL.select(DSL.field("value", TEST_PIECE.ID.getDataType()))
        .from(DSL.table("json_each({0})", DSL.val(all)));
  }

  @Override
  public List<TestPiece> list(PieceFilter filter) {
    Condition which = PieceSearch.condition(filter);
    return access.read(dsl -> fetch(dsl, which, filter.limit(), filter.offset()));
  }

  @Override
  public List<TestPiece> pulled(UUID clothId, Grain grain, Set<String> stitchTypes) {
    Condition which =
        TEST_PIECE
            .CLOTH_ID
            .eq(clothId)
            .and(TEST_PIECE.GRAIN.eq(grain.key()))
            .and(TEST_PIECE.SEAM_END.isNotNull())
            .and(TEST_PIECE.STITCH_TYPE.in(stitchTypes));
    return access.read(dsl -> fetch(dsl, which, Integer.MAX_VALUE, 0));
  }

  @Override
  public int count(PieceFilter filter) {
    return access.read(dsl -> dsl.fetchCount(TEST_PIECE, PieceSearch.condition(filter)));
  }

  private static List<TestPiece> fetch(DSLContext dsl, Condition which, int limit, int offset) {
    Select<?> ids =
        DSL.select(TEST_PIECE.ID)
            .from(TEST_PIECE)
            .where(which)
            .orderBy(TEST_PIECE.SEWN_ON.desc(), TEST_PIECE.ID.desc())
            .limit(limit)
            .offset(offset);
    Map<UUID, List<PullReading>> pulls = PiecePartRows.pulls(dsl, ids);
    Map<UUID, List<FaultSeen>> faults = PiecePartRows.faults(dsl, ids);
    return new PieceReader(new PieceReader.Known(), pulls, faults)
        .all(
            dsl.select(PieceRow.COLUMNS)
                .from(TEST_PIECE)
                .where(which)
                .orderBy(TEST_PIECE.SEWN_ON.desc(), TEST_PIECE.ID.desc())
                .limit(limit)
                .offset(offset));
  }

  @Override
  public List<TestPiece> chainOf(UUID pieceId) {
    TestPiece first = find(pieceId);
    Set<UUID> seen = new HashSet<>();
    while (first != null && first.parent() != null && seen.add(first.id())) {
      TestPiece parent = find(first.parent().pieceId());
      if (parent == null) {
        break;
      }
      first = parent;
    }
    List<TestPiece> chain = new ArrayList<>();
    Set<UUID> found = new HashSet<>();
    if (first != null) {
      addOnce(chain, found, first);
    }
    for (int i = 0; i < chain.size(); i++) {
      UUID at = chain.get(i).id();
      access
          .read(dsl -> fetch(dsl, TEST_PIECE.PARENT_ID.eq(at), Integer.MAX_VALUE, 0))
          .forEach(each -> addOnce(chain, found, each));
    }
    return chain;
  }

  /** No key forbids pieces to follow each other in a circle, as in a file that was rescued. */
  private static void addOnce(List<TestPiece> chain, Set<UUID> found, TestPiece piece) {
    if (found.add(piece.id())) {
      chain.add(piece);
    }
  }
}
