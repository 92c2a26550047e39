package walebook.sheet;

import java.util.List;

/** The columns of the garment sheets: a row is one check of one garment. */
final class GarmentColumns {
  private GarmentColumns() {}

  static List<Column<GarmentRow>> of(PieceLookup lookup) {
    return List.of(
        Column.text(
            "garment",
            "sheet.garments.garment",
            "sheet.garments.garment.says",
            Origin.TYPED,
            Format.LABEL,
            GarmentRow::garment),
        Column.text(
            "student",
            "sheet.garments.student",
            "sheet.garments.student.says",
            Origin.PERSON,
            Format.TEXT,
            row -> lookup.name(row.studentId())),
        Column.words(
            "kind",
            "sheet.garments.kind",
            "sheet.garments.kind.says",
            Origin.TYPED,
            GarmentRow::kind),
        Column.text(
            "cloth",
            "sheet.garments.cloth",
            "sheet.garments.cloth.says",
            Origin.TYPED,
            Format.TEXT,
            GarmentRow::cloth),
        Column.text(
            "check",
            "sheet.garments.check",
            "sheet.garments.check.says",
            Origin.GARMENT,
            Format.LABEL,
            GarmentRow::check),
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
