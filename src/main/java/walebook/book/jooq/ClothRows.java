package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CLOTH;

import java.util.List;
import walebook.book.Shelf;
import walebook.book.jooq.made.tables.records.ClothReadingRecord;
import walebook.book.jooq.made.tables.records.ClothRecord;
import walebook.book.jooq.made.tables.records.ClothWashRecord;
import walebook.record.Cloth;
import walebook.record.ClothReading;
import walebook.record.ClothWash;
import walebook.record.CutEdge;
import walebook.record.Edge;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.How;
import walebook.record.Keyed;
import walebook.record.Pull;

/** Cloths and what was measured on them, as rows. */
final class ClothRows {
  private ClothRows() {}

  static Shelf<Cloth> cloths(Access access) {
    return new JooqShelf<>(
        access, CLOTH, List.of(CLOTH.NAME, CLOTH.ID), ClothRows::row, ClothRows::cloth);
  }

  private static ClothRecord row(Cloth cloth) {
    ClothRecord row = Rows.stamped(new ClothRecord(), cloth.id(), cloth.stamp());
    row.setName(cloth.name());
    row.setKind(cloth.kind());
    row.setFibre(cloth.fibre());
    row.setElastanePercent(cloth.elastanePercent());
    row.setMassGm2(cloth.massGm2());
    row.setWidthMm(cloth.widthMm());
    row.setThicknessMm(cloth.thicknessMm());
    row.setDoesFray(cloth.edge().frays());
    row.setDoesShed(cloth.edge().sheds());
    row.setDoesLadder(cloth.edge().ladders());
    row.setDoesCurl(cloth.edge().curls());
    row.setNeedsFinishing(cloth.edge().needsFinishing());
    row.setIsRetired(cloth.retired());
    row.setRemark(cloth.remark());
    return row;
  }

  static Cloth cloth(ClothRecord row) {
    return new Cloth(
        row.getId(),
        row.getName(),
        row.getKind(),
        row.getFibre(),
        row.getElastanePercent(),
        row.getMassGm2(),
        row.getWidthMm(),
        row.getThicknessMm(),
        new Edge(
            row.getDoesFray(),
            row.getDoesShed(),
            row.getDoesLadder(),
            row.getDoesCurl(),
            row.getNeedsFinishing()),
        row.getRemark(),
        row.getIsRetired(),
        Rows.stamp(row));
  }

  static ClothReadingRecord row(ClothReading reading) {
    ClothReadingRecord row = Rows.stamped(new ClothReadingRecord(), reading.id(), reading.stamp());
    How how = reading.how();
    row.setClothId(reading.clothId());
    row.setClassId(reading.classId());
    row.setLessonId(reading.lessonId());
    row.setMeasuredBy(reading.measuredBy());
    row.setGrain(reading.grain().key());
    row.setGaugeMm(reading.gaugeMm());
    row.setStretchedMm(reading.stretchedMm());
    row.setReleasedMm(reading.releasedMm());
    row.setRestS(how.restS());
    row.setFold((how.fold() == null ? Fold.SINGLE : how.fold()).key());
    row.setCutEdge(reading.edge().key());
    row.setPull((how.pull() == null ? Pull.COMFORTABLE : how.pull()).key());
    row.setLoadG(how.loadG());
    row.setHoldS(how.holdS());
    row.setCycle((long) reading.cycle());
    row.setMeasuredOn(reading.measuredOn());
    row.setRemark(reading.remark());
    return row;
  }

  static ClothReading reading(ClothReadingRecord row) {
    How how =
        new How(
            Keyed.of(Fold.class, row.getFold()),
            Keyed.of(Pull.class, row.getPull()),
            row.getLoadG(),
            row.getHoldS(),
            row.getRestS());
    return new ClothReading(
        row.getId(),
        row.getClothId(),
        row.getClassId(),
        row.getLessonId(),
        row.getMeasuredBy(),
        Keyed.of(Grain.class, row.getGrain()),
        row.getGaugeMm(),
        row.getStretchedMm(),
        row.getReleasedMm(),
        how,
        Keyed.of(CutEdge.class, row.getCutEdge()),
        Math.toIntExact(row.getCycle()),
        row.getMeasuredOn(),
        row.getRemark(),
        Rows.stamp(row));
  }

  static ClothWashRecord row(ClothWash wash) {
    ClothWashRecord row = Rows.stamped(new ClothWashRecord(), wash.id(), wash.stamp());
    row.setClothId(wash.clothId());
    row.setGrain(wash.grain().key());
    row.setBeforeMm(wash.beforeMm());
    row.setAfterMm(wash.afterMm());
    row.setWash(wash.wash());
    row.setWashedOn(wash.washedOn());
    return row;
  }

  static ClothWash wash(ClothWashRecord row) {
    return new ClothWash(
        row.getId(),
        row.getClothId(),
        Keyed.of(Grain.class, row.getGrain()),
        row.getBeforeMm(),
        row.getAfterMm(),
        row.getWash(),
        row.getWashedOn(),
        Rows.stamp(row));
  }
}
