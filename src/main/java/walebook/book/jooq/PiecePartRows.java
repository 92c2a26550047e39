package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.FAULT_SEEN;
import static walebook.book.jooq.made.Tables.PIECE_PULL;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Select;
import org.jooq.TableRecord;
import walebook.book.Ids;
import walebook.book.jooq.made.tables.records.FaultSeenRecord;
import walebook.book.jooq.made.tables.records.PiecePullRecord;
import walebook.book.jooq.made.tables.records.TestPieceRecord;
import walebook.record.FaultPlace;
import walebook.record.FaultSeen;
import walebook.record.FaultWhen;
import walebook.record.Keyed;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/** The pulls and faults of a piece as rows; a single pull stands in the piece's own row. */
final class PiecePartRows {
  private PiecePartRows() {}

  static boolean none(TestPiece piece) {
    return piece.seen().faults().isEmpty() && piece.measure().pulls().size() <= 1;
  }

  static List<TableRecord<?>> of(TestPiece piece) {
    List<TableRecord<?>> rows = new ArrayList<>();
    if (piece.measure().pulls().size() > 1) {
      for (PullReading pull : piece.measure().pulls()) {
        PiecePullRecord row = Rows.stamped(new PiecePullRecord(), Ids.next(), piece.stamp());
        row.setPieceId(piece.id());
        row.setNth((long) pull.nth());
        row.setSeamEnd(pull.end().key());
        row.setEndMm(pull.endMm());
        rows.add(row);
      }
    }
    for (FaultSeen fault : piece.seen().faults()) {
      FaultSeenRecord row = Rows.stamped(new FaultSeenRecord(), Ids.next(), piece.stamp());
      row.setPieceId(piece.id());
      row.setFault(fault.fault());
      row.setPlace(fault.place().key());
      row.setSeverity((long) fault.severity());
      row.setSeenWhen(fault.when().key());
      rows.add(row);
    }
    return rows;
  }

  /** A piece from rows that were kept of it. */
  static TestPiece piece(TestPieceRecord row, List<TableRecord<?>> kept) {
    List<PullReading> pulls =
        kept.stream()
            .filter(each -> each.getTable().equals(PIECE_PULL))
            .map(PiecePartRows::pull)
            .sorted(Comparator.comparingInt(PullReading::nth))
            .toList();
    List<FaultSeen> faults =
        kept.stream()
            .filter(each -> each.getTable().equals(FAULT_SEEN))
            .sorted(Comparator.comparing(each -> each.get(FAULT_SEEN.ID).toString()))
            .map(PiecePartRows::fault)
            .toList();
    return PieceRows.piece(row, pulls, faults);
  }

  private static PullReading pull(Record row) {
    return new PullReading(
        Math.toIntExact(row.get(PIECE_PULL.NTH)),
        Keyed.of(SeamEnd.class, row.get(PIECE_PULL.SEAM_END)),
        row.get(PIECE_PULL.END_MM));
  }

  private static FaultSeen fault(Record row) {
    return new FaultSeen(
        row.get(FAULT_SEEN.FAULT),
        Keyed.of(FaultPlace.class, row.get(FAULT_SEEN.PLACE)),
        Math.toIntExact(row.get(FAULT_SEEN.SEVERITY)),
        Keyed.of(FaultWhen.class, row.get(FAULT_SEEN.SEEN_WHEN)));
  }

  static Map<UUID, List<PullReading>> pulls(DSLContext dsl, Select<?> pieceIds) {
    return dsl.selectFrom(PIECE_PULL)
        .where(PIECE_PULL.PIECE_ID.in(ids(pieceIds)))
        .orderBy(PIECE_PULL.PIECE_ID, PIECE_PULL.NTH)
        .fetchGroups(PIECE_PULL.PIECE_ID, PiecePartRows::pull);
  }

  static Map<UUID, List<FaultSeen>> faults(DSLContext dsl, Select<?> pieceIds) {
    return dsl.selectFrom(FAULT_SEEN)
        .where(FAULT_SEEN.PIECE_ID.in(ids(pieceIds)))
        .orderBy(FAULT_SEEN.PIECE_ID, FAULT_SEEN.ID)
        .fetchGroups(FAULT_SEEN.PIECE_ID, PiecePartRows::fault);
  }

  @SuppressWarnings("unchecked")
  private static Select<org.jooq.Record1<UUID>> ids(Select<?> pieceIds) {
    return (Select<org.jooq.Record1<UUID>>) pieceIds;
  }
}
