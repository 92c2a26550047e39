package walebook.sheet;

import java.util.List;

/** The columns of the garment sheets: a row is one check of one garment. */
final class GarmentColumns {
  private GarmentColumns() {}

  static List<Column<GarmentRow>> of(PieceLookup lookup) {
    return List.of(
        Column.<GarmentRow>text(
                "garment",
                "sheet.garments.garment",
                "sheet.garments.garment.says",
                Origin.TYPED,
                Format.LONG_TEXT,
                GarmentRow::garment)
            .wide(36),
        Column.<GarmentRow>text(
                "student",
                "sheet.garments.student",
                "sheet.garments.student.says",
                Origin.PERSON,
                Format.LONG_TEXT,
                row -> lookup.name(row.studentId()))
            .wide(20),
        Column.words(
            "kind",
            "sheet.garments.kind",
            "sheet.garments.kind.says",
            Origin.TYPED,
            GarmentRow::kind),
        Column.<GarmentRow>text(
                "cloth",
                "sheet.garments.cloth",
                "sheet.garments.cloth.says",
                Origin.TYPED,
                Format.LONG_TEXT,
                GarmentRow::cloth)
            .wide(20),
        Column.<GarmentRow>text(
                "check",
                "sheet.garments.check",
                "sheet.garments.check.says",
                Origin.GARMENT,
                Format.LONG_TEXT,
                GarmentRow::check)
            .wide(44),
        Column.words(
            "verdict",
            "sheet.garments.verdict",
            "sheet.garments.verdict.says",
            Origin.GARMENT,
            GarmentRow::verdict),
        Column.text(
            "answer",
            "sheet.garments.answer",
            "sheet.garments.answer.says",
            Origin.GARMENT,
            Format.LONG_TEXT,
            GarmentRow::answer));
  }
}
