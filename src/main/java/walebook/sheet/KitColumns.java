package walebook.sheet;

import java.util.List;

/** The columns of the kit: a row is one thing that a lesson needs. */
final class KitColumns {
  private KitColumns() {}

  static List<Column<KitRow>> of() {
    return List.of(
        Column.text(
            "lesson",
            "sheet.kit.lesson",
            "sheet.kit.lesson.says",
            Origin.CALLED,
            Format.TITLE,
            KitRow::lesson),
        Column.text(
            "what",
            "sheet.kit.what",
            "sheet.kit.what.says",
            Origin.KIT,
            Format.LONG_TEXT,
            KitRow::what),
        Column.figure(
            "per-student",
            "sheet.kit.per-student",
            "",
            "sheet.kit.per-student.says",
            Origin.KIT,
            Format.HUNDREDTHS,
            KitRow::perStudent),
        Column.figure(
            "for-class",
            "sheet.kit.for-class",
            "",
            "sheet.kit.for-class.says",
            Origin.KIT,
            Format.HUNDREDTHS,
            KitRow::forClass),
        Column.words("unit", "sheet.kit.unit", "sheet.kit.unit.says", Origin.KIT, KitRow::unit),
        Column.figure(
            "cutting-plan",
            "sheet.kit.cutting-plan",
            "mm",
            "sheet.kit.cutting-plan.says",
            Origin.CUTTING,
            Format.WHOLE,
            KitRow::cuttingPlanMm),
        Column.figure(
            "price",
            "sheet.kit.price",
            "",
            "sheet.kit.price.says",
            Origin.PRICE,
            Format.HUNDREDTHS,
            KitRow::price),
        Column.figure(
            "cost",
            "sheet.kit.cost",
            "",
            "sheet.kit.cost.says",
            Origin.COST,
            Format.HUNDREDTHS,
            KitRow::cost));
  }
}
