package walebook.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.compare.ClothReturn;
import walebook.compare.ClothStretch;
import walebook.words.Words;

/** The columns of the sheet of cloths: a row is one cloth along one grain. */
final class ClothColumns {
  private ClothColumns() {}

  static List<Column<ClothLine>> all(Words words) {
    Choices choices = new Choices(words);
    return Stream.of(
            which(choices), stretch(choices), back(), made(), body(), edge(choices), remark())
        .flatMap(List::stream)
        .toList();
  }

  private static List<Column<ClothLine>> which(Choices choices) {
    return List.of(
        Column.<ClothLine>text(
                "cloth",
                "sheet.cloths.cloth",
                "sheet.cloths.cloth.says",
                Origin.ROOM,
                Format.LONG_TEXT,
                line -> line.cloth().name())
            .wide(20),
        Column.<ClothLine>words(
                "grain",
                "sheet.cloths.grain",
                "sheet.cloths.grain.says",
                Origin.TYPED,
                line -> choices.grain(line.grain()))
            .wide(13));
  }

  private static List<Column<ClothLine>> stretch(Choices choices) {
    return List.of(
        Column.tally(
            "readings",
            "sheet.cloths.readings",
            "sheet.cloths.readings.says",
            Origin.COUNT,
            ClothLine::readings),
        Column.tally(
            "aside",
            "sheet.cloths.aside",
            "sheet.cloths.aside.says",
            Origin.COUNT,
            ClothLine::aside),
        Column.<ClothLine>words(
                "pull",
                "sheet.cloths.pull",
                "sheet.cloths.pull.says",
                Origin.HARDEST_PULL,
                line -> pull(choices, line.stretch()))
            .wide(13),
        Column.tally(
            "n", "sheet.cloths.n", "sheet.cloths.n.says", Origin.COUNT, line -> n(line.stretch())),
        Column.figure(
            "stretch",
            "sheet.cloths.stretch",
            "%",
            "sheet.cloths.stretch.says",
            Origin.CLOTH_STRETCH,
            Format.NARROW,
            line -> percent(line.stretch())),
        Column.figure(
            "uncertainty",
            "sheet.cloths.uncertainty",
            "points",
            "sheet.cloths.uncertainty.says",
            Origin.CLOTH_UNCERTAINTY,
            Format.NARROW_HUNDREDTHS,
            line -> uncertainty(line.stretch())));
  }

  private static List<Column<ClothLine>> back() {
    return List.of(
        Column.tally(
            "released",
            "sheet.cloths.released",
            "sheet.cloths.released.says",
            Origin.COUNT,
            line -> released(line.back())),
        Column.figure(
            "growth",
            "sheet.cloths.growth",
            "%",
            "sheet.cloths.growth.says",
            Origin.GROWTH,
            Format.NARROW,
            line -> growth(line.back())),
        Column.figure(
            "recovery",
            "sheet.cloths.recovery",
            "%",
            "sheet.cloths.recovery.says",
            Origin.RECOVERY,
            Format.NARROW,
            line -> recovery(line.back())));
  }

  private static List<Column<ClothLine>> made() {
    return List.of(
        Column.<ClothLine>text(
                "kind",
                "sheet.cloths.kind",
                "sheet.cloths.kind.says",
                Origin.ROOM,
                Format.LONG_TEXT,
                line -> line.cloth().kind())
            .wide(16),
        Column.<ClothLine>text(
                "fibre",
                "sheet.cloths.fibre",
                "sheet.cloths.fibre.says",
                Origin.ROOM,
                Format.LONG_TEXT,
                line -> line.cloth().fibre())
            .wide(16),
        Column.figure(
            "elastane",
            "sheet.cloths.elastane",
            "%",
            "sheet.cloths.elastane.says",
            Origin.ROOM,
            Format.NARROW,
            line -> line.cloth().elastanePercent()));
  }

  private static List<Column<ClothLine>> body() {
    return List.of(
        Column.figure(
            "mass",
            "sheet.cloths.mass",
            "g/m²",
            "sheet.cloths.mass.says",
            Origin.ROOM,
            Format.NARROW_TYPED,
            line -> line.cloth().massGm2()),
        Column.figure(
            "width",
            "sheet.cloths.width",
            "mm",
            "sheet.cloths.width.says",
            Origin.ROOM,
            Format.NARROW_TYPED,
            line -> line.cloth().widthMm()),
        Column.figure(
            "thickness",
            "sheet.cloths.thickness",
            "mm",
            "sheet.cloths.thickness.says",
            Origin.ROOM,
            Format.NARROW_HUNDREDTHS,
            line -> line.cloth().thicknessMm()));
  }

  private static List<Column<ClothLine>> edge(Choices choices) {
    return List.of(
        Column.<ClothLine>words(
                "frays",
                "sheet.cloths.frays",
                "sheet.cloths.frays.says",
                Origin.ROOM,
                line -> choices.yes(line.cloth().edge().frays()))
            .wide(9),
        Column.<ClothLine>words(
                "sheds",
                "sheet.cloths.sheds",
                "sheet.cloths.sheds.says",
                Origin.ROOM,
                line -> choices.yes(line.cloth().edge().sheds()))
            .wide(9),
        Column.<ClothLine>words(
                "ladders",
                "sheet.cloths.ladders",
                "sheet.cloths.ladders.says",
                Origin.ROOM,
                line -> choices.yes(line.cloth().edge().ladders()))
            .wide(9),
        Column.<ClothLine>words(
                "curls",
                "sheet.cloths.curls",
                "sheet.cloths.curls.says",
                Origin.ROOM,
                line -> choices.yes(line.cloth().edge().curls()))
            .wide(9),
        Column.<ClothLine>words(
                "needs-finishing",
                "sheet.cloths.needs-finishing",
                "sheet.cloths.needs-finishing.says",
                Origin.ROOM,
                line -> choices.yes(line.cloth().edge().needsFinishing()))
            .wide(9));
  }

  private static List<Column<ClothLine>> remark() {
    return List.of(
        Column.<ClothLine>text(
                "remark",
                "sheet.cloths.remark",
                "sheet.cloths.remark.says",
                Origin.REMARK,
                Format.LONG_TEXT,
                line -> line.cloth().remark())
            .wide(21));
  }

  private static @Nullable String pull(Choices choices, @Nullable ClothStretch stretch) {
    return stretch == null ? null : choices.pull(stretch.pull());
  }

  private static @Nullable Number n(@Nullable ClothStretch stretch) {
    return stretch == null ? null : stretch.n();
  }

  private static @Nullable Number percent(@Nullable ClothStretch stretch) {
    return stretch == null ? null : stretch.percent();
  }

  private static @Nullable Number uncertainty(@Nullable ClothStretch stretch) {
    return stretch == null ? null : stretch.uncertainty();
  }

  private static @Nullable Number released(@Nullable ClothReturn back) {
    return back == null ? null : back.n();
  }

  private static @Nullable Number growth(@Nullable ClothReturn back) {
    return back == null ? null : back.growth();
  }

  private static @Nullable Number recovery(@Nullable ClothReturn back) {
    return back == null ? null : back.recovery();
  }
}
