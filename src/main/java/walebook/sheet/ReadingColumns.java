package walebook.sheet;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import walebook.record.ClothReading;

/** The columns of the cloths' readings: a row is one reading. */
final class ReadingColumns {
  private ReadingColumns() {}

  static List<Column<ClothReading>> of(PieceLookup lookup, Choices choices, Set<UUID> setAside) {
    return Stream.of(which(lookup, choices), lengths(), how(choices), last(choices, setAside))
        .flatMap(List::stream)
        .toList();
  }

  private static List<Column<ClothReading>> which(PieceLookup lookup, Choices choices) {
    return List.of(
        Column.<ClothReading>text(
                "cloth",
                "sheet.readings.cloth",
                "sheet.readings.cloth.says",
                Origin.ROOM,
                Format.LONG_TEXT,
                reading -> lookup.name(reading.clothId()))
            .wide(20),
        Column.words(
            "grain",
            "sheet.readings.grain",
            "sheet.readings.grain.says",
            Origin.TYPED,
            reading -> choices.grain(reading.grain())),
        Column.<ClothReading>text(
                "lesson",
                "sheet.readings.lesson",
                "sheet.readings.lesson.says",
                Origin.TYPED,
                Format.LONG_TEXT,
                reading -> {
                  UUID lesson = reading.lessonId();
                  return lesson == null ? null : lookup.lessons().get(lesson);
                })
            .wide(31),
        Column.<ClothReading>text(
                "measured-by",
                "sheet.readings.measured-by",
                "sheet.readings.measured-by.says",
                Origin.PERSON,
                Format.LONG_TEXT,
                reading -> lookup.name(reading.measuredBy()))
            .wide(20),
        Column.of(
            "measured-on",
            "sheet.readings.measured-on",
            "",
            "sheet.readings.measured-on.says",
            Origin.TYPED,
            Format.DAY,
            reading -> Value.of(reading.measuredOn())));
  }

  private static List<Column<ClothReading>> lengths() {
    return List.of(
        Column.figure(
            "gauge",
            "sheet.readings.gauge",
            "mm",
            "sheet.readings.gauge.says",
            Origin.TYPED,
            Format.NARROW,
            ClothReading::gaugeMm),
        Column.figure(
            "stretched",
            "sheet.readings.stretched",
            "mm",
            "sheet.readings.stretched.says",
            Origin.TYPED,
            Format.NARROW,
            ClothReading::stretchedMm),
        Column.figure(
            "released",
            "sheet.readings.released",
            "mm",
            "sheet.readings.released.says",
            Origin.TYPED,
            Format.NARROW,
            ClothReading::releasedMm),
        Column.figure(
            "stretch",
            "sheet.readings.stretch",
            "%",
            "sheet.readings.stretch.says",
            Origin.READING,
            Format.NARROW,
            ClothReading::stretchPercent));
  }

  private static List<Column<ClothReading>> how(Choices choices) {
    return List.of(
        Column.words(
            "pull",
            "sheet.readings.pull",
            "sheet.readings.pull.says",
            Origin.TYPED,
            reading -> choices.pull(reading.how().pull())),
        Column.figure(
            "load",
            "sheet.readings.load",
            "g",
            "sheet.readings.load.says",
            Origin.TYPED,
            Format.NARROW,
            reading -> reading.how().loadG()),
        Column.words(
            "fold",
            "sheet.readings.fold",
            "sheet.readings.fold.says",
            Origin.TYPED,
            reading -> choices.fold(reading.how().fold())),
        Column.words(
            "edge",
            "sheet.readings.edge",
            "sheet.readings.edge.says",
            Origin.TYPED,
            reading -> choices.edge(reading.edge())),
        Column.figure(
            "hold",
            "sheet.readings.hold",
            "s",
            "sheet.readings.hold.says",
            Origin.TYPED,
            Format.NARROW_TYPED,
            reading -> reading.how().holdS()),
        Column.figure(
            "rest",
            "sheet.readings.rest",
            "s",
            "sheet.readings.rest.says",
            Origin.TYPED,
            Format.NARROW_TYPED,
            reading -> reading.how().restS()));
  }

  private static List<Column<ClothReading>> last(Choices choices, Set<UUID> setAside) {
    return List.of(
        Column.figure(
            "cycle",
            "sheet.readings.cycle",
            "",
            "sheet.readings.cycle.says",
            Origin.TYPED,
            Format.TALLY,
            ClothReading::cycle),
        Column.<ClothReading>words(
                "aside",
                "sheet.readings.aside",
                "sheet.readings.aside.says",
                Origin.TYPED,
                reading -> setAside.contains(reading.id()) ? choices.yes(true) : null)
            .wide(9),
        Column.<ClothReading>text(
                "remark",
                "sheet.readings.remark",
                "sheet.readings.remark.says",
                Origin.REMARK,
                Format.LONG_TEXT,
                ClothReading::remark)
            .wide(18));
  }
}
