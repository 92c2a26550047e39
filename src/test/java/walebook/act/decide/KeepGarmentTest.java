package walebook.act.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import walebook.book.Classroom;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.record.GarmentEdge;
import walebook.record.GarmentOpening;
import walebook.record.GarmentSheet;
import walebook.record.MachineKind;
import walebook.record.StitchChoice;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** A sheet as it was typed: bands, links with stitches of their own, and input that cannot be. */
class KeepGarmentTest {
  private static final SharedTables TABLES = SharedTables.read();
  private static final Map<String, String> TOP =
      Map.of(
          "sheet-name", "Grey top",
          "garment-kind", "fitted-top",
          "grain-round", "course",
          "machine-kind", "sewing",
          "stitch", "304",
          "seams", "2");

  @TempDir Path folder;
  private int books;

  private static Map<String, String> with(String... pairs) {
    Map<String, String> typed = new HashMap<>(TOP);
    for (int i = 0; i < pairs.length; i += 2) {
      typed.put(pairs[i], pairs[i + 1]);
    }
    return typed;
  }

  private Answer<GarmentSheet> read(Map<String, String> typed, Unit unit) {
    try (Classroom room = Classroom.in(folder.resolve("a" + books++ + ".walebook"))) {
      return new KeepGarment(room.book, TABLES, Classroom.CLOCK).read(null, null, typed, unit);
    }
  }

  private static GarmentOpening neck(GarmentSheet sheet) {
    return sheet.openings().stream()
        .filter(each -> each.edge().equals("neckline"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aBandAndLinksWithStitchesOfTheirOwnGoThereAndBack() {
    Map<String, String> typed =
        with(
            "opening-neckline", "520",
            "neckline-seam", "yes",
            "neckline-seam-stitch", "514",
            "neckline-seam-machine", "overlocker",
            "neckline-seam-length", "2.5",
            "neckline-band", "yes",
            "neckline-ratio", "0.8",
            "neckline-finished-width", "20",
            "neckline-interfacing", "yes",
            "neckline-interfacing-stated", "45 %",
            "finished-chest", "880",
            "finished-upper-arm", "290",
            "upper-arm-seams", "1",
            "wear", "sport",
            "remark", "for the harbour run");
    GarmentSheet sheet = read(typed, Unit.MM).value();
    GarmentOpening neck = neck(sheet);
    assertThat(neck.bandRatio()).isEqualTo(0.8);
    assertThat(neck.bandWidthMm()).isEqualTo(20.0);
    assertThat(neck.edges())
        .containsExactly(
            new GarmentEdge(
                "seam", new StitchChoice(MachineKind.OVERLOCKER, "514", null, 2.5), null),
            new GarmentEdge("interfacing", null, 45.0),
            new GarmentEdge("band", null, null));
    assertThat(sheet.wear()).isEqualTo("sport");
    assertThat(sheet.girths().get(1).seams()).isEqualTo(1);
    Map<String, String> again = TypedGarment.of(sheet, Map.of(), Unit.MM);
    GarmentSheet back = read(again, Unit.MM).value();
    assertThat(back.openings()).isEqualTo(sheet.openings());
    assertThat(back.girths()).isEqualTo(sheet.girths());
    assertThat(back.remark()).isEqualTo(sheet.remark());
    assertThat(KeepGarment.fields()).containsAll(again.keySet()).doesNotHaveDuplicates();
  }

  @Test
  void aMachineThatWasNotSaidIsTheStitchsOwn() {
    GarmentSheet sheet =
        read(with("neckline-hem", "yes", "neckline-hem-stitch", "406"), Unit.MM).value();
    assertThat(Objects.requireNonNull(neck(sheet).edges().get(0).stitch()).machineKind())
        .isEqualTo(MachineKind.COVERSTITCH);
  }

  @Test
  void whatIsTypedOfSomethingThatDoesNotGoRoundCountsForNothing() {
    Answer<GarmentSheet> read =
        read(with("neckline-ratio", "x", "neckline-hem-width", "99x", "body-thigh", "-3"), Unit.MM);
    assertThat(read.problems()).isEmpty();
    assertThat(neck(read.value()).edges()).isEmpty();
  }

  private static void said(Answer<GarmentSheet> read, String field, String code, boolean refused) {
    Problem found =
        read.problems().stream()
            .filter(each -> each.place().equals(Place.field(field)))
            .findFirst()
            .orElseThrow(() -> new AssertionError(read.problems()));
    assertThat(found.code()).isEqualTo(code);
    assertThat(found.refuses()).isEqualTo(refused);
    assertThat(Words.english().sayAtField(found)).doesNotContain("{", "}", "[problem");
    assertThat(read.isGood()).isEqualTo(!refused);
  }

  @ParameterizedTest
  @ValueSource(strings = {"body-chest", "finished-chest", "opening-neckline"})
  void aGirthOfNothingOrLessIsRefused(String field) {
    said(read(with(field, "0"), Unit.MM), field, "girth.not-positive", true);
    said(read(with(field, "-5 cm"), Unit.MM), field, "girth.not-positive", true);
  }

  /** 90 typed where mm are usual, 900 where cm are: the other unit is asked about by name. */
  @ParameterizedTest
  @CsvSource({
    "body-chest, 90, MM, girth.small, 90 cm",
    "body-chest, 900, CM, girth.large, 900 mm",
    "finished-chest, 88, MM, girth.small, 88 cm",
    "body-head, 57, MM, girth.small, 57 cm",
    "opening-neckline, 52, MM, girth.small, 52 cm",
  })
  void anotherUnitIsAskedAbout(String field, String text, Unit unit, String code, String meant) {
    Answer<GarmentSheet> read = read(with(field, text), unit);
    said(read, field, code, false);
    assertThat(Words.english().sayAtField(read.problems().get(0))).contains(meant);
  }

  @Test
  void twoMeasuresInTwoUnitsAreAskedAbout() {
    said(
        read(with("body-head", "570", "opening-neckline", "130"), Unit.MM),
        "opening-neckline",
        "girth.mixed",
        false);
  }

  @Test
  void aGaugeBeyondWhatClothDoesIsAskedAboutAndHalfAGaugeToo() {
    said(
        read(with("gauge-from", "100", "gauge-to", "500"), Unit.MM),
        "gauge-to",
        "gauge.far",
        false);
    said(
        read(with("gauge-from", "100", "gauge-to", "90"), Unit.MM),
        "gauge-to",
        "gauge.shorter",
        true);
    said(read(with("gauge-from", "100"), Unit.MM), "gauge-to", "gauge.half", false);
    said(read(with("gauge-to", "130"), Unit.MM), "gauge-from", "gauge.half", false);
  }

  @Test
  void halfABandIsAskedForTheOtherHalf() {
    said(
        read(with("neckline-band", "yes", "neckline-ratio", "0.8"), Unit.MM),
        "neckline-finished-width",
        "band.width-missing",
        false);
    said(
        read(with("neckline-band", "yes", "neckline-finished-width", "20"), Unit.MM),
        "neckline-ratio",
        "band.ratio-missing",
        false);
    said(
        read(
            with("neckline-band", "yes", "neckline-ratio", "0", "neckline-finished-width", "20"),
            Unit.MM),
        "neckline-ratio",
        "number.too-small",
        true);
  }

  @Test
  void aStitchOfAnotherMachineIsAskedAbout() {
    said(read(with("stitch", "514"), Unit.MM), "stitch", "stitch.other-machine", false);
  }

  @Test
  void aDraftIsKeptWithoutTheBodyAndGoesWithTheSave() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      KeepGarmentDraft drafts = new KeepGarmentDraft(room.book);
      KeepGarment keep = new KeepGarment(room.book, TABLES, Classroom.CLOCK);
      Map<String, String> typed = with("body-chest", "903", "finished-chest", "88x");
      drafts.keep(null, room.first.id(), typed, Map.of());
      assertThat(drafts.find(null, room.second.id())).isNull();
      assertThat(Objects.requireNonNull(drafts.find(null, room.first.id())).typed())
          .containsEntry("finished-chest", "88x")
          .doesNotContainKey("body-chest");
      typed.put("keep-body", "yes");
      drafts.keep(null, room.first.id(), typed, Map.of());
      assertThat(Objects.requireNonNull(drafts.find(null, room.first.id())).typed())
          .containsEntry("body-chest", "903");
      GarmentSheet sheet = keep.read(null, room.first.id(), with(), Unit.MM).value();
      keep.save(sheet, true, room.first.id(), Map.of());
      assertThat(drafts.find(null, room.first.id())).isNull();
      assertThat(room.book.drafts().of("garment")).isEqualTo(List.of());
    }
  }

  /** Two people at one sheet: what each typed is kept until each saves or throws it away. */
  @Test
  void anothersSaveLeavesWhatTheOwnerTyped() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      KeepGarmentDraft drafts = new KeepGarmentDraft(room.book);
      KeepGarment keep = new KeepGarment(room.book, TABLES, Classroom.CLOCK);
      UUID owner = room.first.id();
      UUID other = room.second.id();
      GarmentSheet sheet = keep.read(null, owner, with(), Unit.MM).value();
      keep.save(sheet, true, owner, Map.of());
      drafts.keep(sheet, owner, with("remark", "half a thou"), with());
      drafts.keep(sheet, other, with("seams", "3"), with());
      assertThat(drafts.find(sheet, owner))
          .isEqualTo(new KeepGarmentDraft.Found(Map.of("remark", "half a thou"), false));
      assertThat(drafts.find(sheet, null)).as("the tutor's").isEqualTo(drafts.find(sheet, owner));
      GarmentSheet next = keep.read(sheet, other, with("seams", "3"), Unit.MM).value();
      keep.save(next, false, other, Map.of());
      assertThat(drafts.find(next, other)).isNull();
      assertThat(drafts.find(next, owner))
          .isEqualTo(new KeepGarmentDraft.Found(Map.of("remark", "half a thou"), true));
      drafts.keep(next, owner, with("seams", "3"), with("seams", "3"));
      assertThat(drafts.find(next, owner)).as("typed back as it was").isNull();
    }
  }
}
