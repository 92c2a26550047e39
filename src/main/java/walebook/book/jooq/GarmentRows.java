package walebook.book.jooq;

import java.util.List;
import java.util.UUID;
import walebook.book.Ids;
import walebook.book.jooq.made.tables.records.GarmentEdgeRecord;
import walebook.book.jooq.made.tables.records.GarmentGirthRecord;
import walebook.book.jooq.made.tables.records.GarmentOpeningRecord;
import walebook.book.jooq.made.tables.records.GarmentSheetRecord;
import walebook.record.GarmentEdge;
import walebook.record.GarmentGirth;
import walebook.record.GarmentOpening;
import walebook.record.GarmentSewing;
import walebook.record.GarmentSheet;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.MachineKind;
import walebook.record.PatternAsks;
import walebook.record.Stamp;
import walebook.record.StitchChoice;

/** Garment sheets as rows. */
final class GarmentRows {
  private GarmentRows() {}

  static GarmentSheetRecord row(GarmentSheet sheet) {
    GarmentSheetRecord row = Rows.stamped(new GarmentSheetRecord(), sheet.id(), sheet.stamp());
    row.setStudentId(sheet.studentId());
    row.setName(sheet.name());
    row.setKind(sheet.kind());
    row.setClothId(sheet.clothId());
    row.setGrainRound(sheet.grainRound().key());
    row.setWear(sheet.wear());
    row.setGaugeFromMm(sheet.pattern().gaugeFromMm());
    row.setGaugeToMm(sheet.pattern().gaugeToMm());
    row.setAllowanceMm(sheet.pattern().allowanceMm());
    GarmentSewing sewing = sheet.sewing();
    row.setMachineKind(sewing.stitch().machineKind().key());
    row.setStitchType(sewing.stitch().stitchType());
    row.setDialWidth(sewing.stitch().dialWidth());
    row.setDialLength(sewing.stitch().dialLength());
    row.setSewnAllowanceMm(sewing.allowanceMm());
    row.setIsTrimmed(sewing.trimmed());
    row.setHasSleeve(sewing.sleeve());
    row.setRemark(sheet.remark());
    return row;
  }

  static GarmentGirthRecord row(GarmentGirth girth, UUID sheetId, Stamp stamp) {
    GarmentGirthRecord row = Rows.stamped(new GarmentGirthRecord(), Ids.next(), stamp);
    row.setSheetId(sheetId);
    row.setGirth(girth.girth());
    row.setFinishedMm(girth.finishedMm());
    row.setSeams((long) girth.seams());
    return row;
  }

  static GarmentOpeningRecord row(GarmentOpening opening, UUID sheetId, Stamp stamp) {
    GarmentOpeningRecord row = Rows.stamped(new GarmentOpeningRecord(), Ids.next(), stamp);
    row.setSheetId(sheetId);
    row.setEdge(opening.edge());
    row.setOverGirth(opening.over());
    row.setOpeningMm(opening.openingMm());
    row.setSeams((long) opening.seams());
    row.setShape(opening.shape());
    row.setBandRatio(opening.bandRatio());
    row.setBandWidthMm(opening.bandWidthMm());
    return row;
  }

  static GarmentEdgeRecord row(GarmentEdge edge, UUID openingId, Stamp stamp) {
    GarmentEdgeRecord row = Rows.stamped(new GarmentEdgeRecord(), Ids.next(), stamp);
    row.setOpeningId(openingId);
    row.setLink(edge.link());
    row.setStatedPercent(edge.statedPercent());
    StitchChoice stitch = edge.stitch();
    if (stitch != null) {
      row.setMachineKind(stitch.machineKind().key());
      row.setStitchType(stitch.stitchType());
      row.setDialWidth(stitch.dialWidth());
      row.setDialLength(stitch.dialLength());
    }
    return row;
  }

  static GarmentSheet sheet(
      GarmentSheetRecord row, List<GarmentGirth> girths, List<GarmentOpening> openings) {
    return new GarmentSheet(
        row.getId(),
        row.getStudentId(),
        row.getName(),
        row.getKind(),
        row.getClothId(),
        Keyed.of(Grain.class, row.getGrainRound()),
        row.getWear(),
        new PatternAsks(row.getGaugeFromMm(), row.getGaugeToMm(), row.getAllowanceMm()),
        new GarmentSewing(
            new StitchChoice(
                Keyed.of(MachineKind.class, row.getMachineKind()),
                row.getStitchType(),
                row.getDialWidth(),
                row.getDialLength()),
            row.getSewnAllowanceMm(),
            row.getIsTrimmed(),
            row.getHasSleeve()),
        girths,
        openings,
        row.getRemark(),
        Rows.stamp(row));
  }

  static GarmentGirth girth(GarmentGirthRecord row) {
    return new GarmentGirth(row.getGirth(), row.getFinishedMm(), Math.toIntExact(row.getSeams()));
  }

  static GarmentOpening opening(GarmentOpeningRecord row, List<GarmentEdge> edges) {
    return new GarmentOpening(
        row.getEdge(),
        row.getOverGirth(),
        row.getOpeningMm(),
        Math.toIntExact(row.getSeams()),
        row.getShape(),
        row.getBandRatio(),
        row.getBandWidthMm(),
        edges);
  }

  static GarmentEdge edge(GarmentEdgeRecord row) {
    MachineKind machine = Keyed.find(MachineKind.class, row.getMachineKind());
    StitchChoice stitch =
        machine == null
            ? null
            : new StitchChoice(
                machine, row.getStitchType(), row.getDialWidth(), row.getDialLength());
    return new GarmentEdge(row.getLink(), stitch, row.getStatedPercent());
  }
}
