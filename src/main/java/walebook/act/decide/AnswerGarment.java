package walebook.act.decide;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.garment.ClothStretch;
import walebook.garment.GarmentAnswers;
import walebook.garment.GarmentCaution;
import walebook.garment.GarmentQuestion;
import walebook.garment.GrainStretch;
import walebook.record.GarmentEdge;
import walebook.record.GarmentSheet;
import walebook.record.Grain;
import walebook.record.MachineKind;
import walebook.record.StitchChoice;
import walebook.record.TestPiece;
import walebook.tables.SharedTables;

/**
 * Answers a garment sheet from what the book holds: the cloth's readings on both grains, and the
 * test pieces sewn on it.
 */
public final class AnswerGarment {
  private final Book book;
  private final SharedTables tables;

  public AnswerGarment(Book book, SharedTables tables) {
    this.book = book;
    this.tables = tables;
  }

  /**
   * All checks of a sheet, and what to do about them.
   *
   * @param sheet need not be saved
   * @param body the body's girths in mm by key; those that are missing are asked for
   * @throws IllegalArgumentException when the sheet's kind or a neck shape is in no table
   */
  public GarmentAnswers answer(GarmentSheet sheet, Map<String, Double> body) {
    GarmentAnswers answers = GarmentAnswers.of(question(sheet, body), tables.garment());
    return usesOverlocker(sheet) ? answers.with(GarmentCaution.OVERLOCKER) : answers;
  }

  /**
   * What a sheet asks, with the evidence that the book has.
   *
   * @param body the body's girths in mm by key
   * @throws IllegalArgumentException when the sheet's kind or a neck shape is in no table
   */
  public GarmentQuestion question(GarmentSheet sheet, Map<String, Double> body) {
    UUID cloth = sheet.clothId();
    List<TestPiece> pieces =
        cloth == null
            ? List.of()
            : book.pieces().pulled(cloth, sheet.grainRound(), stitchTypes(sheet));
    GarmentEvidence evidence = new GarmentEvidence(sheet, pieces, tables.stitchTypes());
    return new AskGarment(sheet, body, tables.garment(), stretch(cloth), evidence).question();
  }

  private static boolean usesOverlocker(GarmentSheet sheet) {
    return stitches(sheet).anyMatch(stitch -> stitch.machineKind() == MachineKind.OVERLOCKER);
  }

  private static Set<String> stitchTypes(GarmentSheet sheet) {
    return stitches(sheet).map(StitchChoice::stitchType).collect(Collectors.toSet());
  }

  private static Stream<StitchChoice> stitches(GarmentSheet sheet) {
    return Stream.concat(
        Stream.of(sheet.sewing().stitch()),
        sheet.openings().stream()
            .flatMap(opening -> opening.edges().stream())
            .map(GarmentEdge::stitch)
            .filter(Objects::nonNull));
  }

  private ClothStretch stretch(@Nullable UUID cloth) {
    if (cloth == null) {
      return new ClothStretch(null, null);
    }
    Map<Grain, walebook.compare.ClothStretch> known =
        walebook.compare.ReadingsThatCount.stretchOf(book, cloth);
    return new ClothStretch(grain(known.get(Grain.WALE)), grain(known.get(Grain.COURSE)));
  }

  private static @Nullable GrainStretch grain(walebook.compare.@Nullable ClothStretch known) {
    return known == null
        ? null
        : new GrainStretch(Math.max(0, known.percent()), known.uncertainty());
  }
}
