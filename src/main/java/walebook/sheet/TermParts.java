package walebook.sheet;

import java.util.ArrayList;
import java.util.List;
import walebook.words.Words;

/** The tables of a term's record in their order; the same for every format and for the preview. */
final class TermParts {
  private final TermFacts facts;
  private final Words words;
  private final List<SheetPart<?>> parts = new ArrayList<>();

  private TermParts(TermFacts facts, Words words) {
    this.facts = facts;
    this.words = words;
  }

  static List<SheetPart<?>> of(TermFacts facts, Words words) {
    return new TermParts(facts, words).all();
  }

  private List<SheetPart<?>> all() {
    parts.add(
        SheetPart.of(
            "sheet.comparison.name",
            "sheet.term.about-comparison",
            "ComparisonTable",
            ComparisonColumns.of(facts.comparison(), words),
            facts.comparison().rows()));
    parts.add(
        SheetPart.of(
            "sheet.fair.name",
            "sheet.term.about-fair",
            "FairTable",
            FairColumns.of(words),
            FairLine.all(facts.findings().fair())));
    parts.add(pieces());
    parts.add(
        SheetPart.of(
            "sheet.cloths.name",
            "sheet.term.about-cloths",
            "ClothTable",
            ClothColumns.all(words),
            facts.cloths()));
    Choices choices = new Choices(words);
    measured(choices);
    parts.add(
        SheetPart.of(
            "sheet.progress.name",
            "sheet.term.about-progress",
            "ProgressTable",
            ProgressColumns.of(facts),
            facts.progress().rows()));
    planned(choices);
    AssessedParts.of(facts, words).forEach(this::onlyFilled);
    return List.copyOf(parts);
  }

  private void measured(Choices choices) {
    onlyFilled(
        SheetPart.of(
            "sheet.readings.name",
            "sheet.term.about-readings",
            "ReadingTable",
            ReadingColumns.of(facts.lookup(), choices, facts.findings().readingsAside()),
            facts.log().readings()));
    onlyFilled(
        SheetPart.of(
            "sheet.washes.name",
            "sheet.term.about-washes",
            "WashTable",
            WashColumns.of(choices),
            facts.log().washes()));
  }

  private void planned(Choices choices) {
    onlyFilled(
        SheetPart.of(
            "sheet.plan.name",
            "sheet.term.about-plan",
            "PlanTable",
            PlanColumns.of(facts.lookup(), choices),
            facts.plan()));
    onlyFilled(
        SheetPart.of(
            "sheet.reading-plan.name",
            "sheet.term.about-reading-plan",
            "ReadingPlanTable",
            ReadingPlanColumns.of(facts.lookup(), choices),
            facts.log().planned()));
    onlyFilled(
        SheetPart.of(
            "sheet.kit.name",
            "sheet.term.about-kit",
            "KitTable",
            KitColumns.of(),
            facts.extras().kit()));
    onlyFilled(
        SheetPart.of(
            "sheet.garments.name",
            "sheet.term.about-garments",
            "GarmentTable",
            GarmentColumns.of(facts.lookup()),
            facts.extras().garments()));
    onlyFilled(
        SheetPart.of(
            "sheet.notes.name",
            "sheet.term.about-notes",
            "NoteTable",
            NoteColumns.of(facts.lookup(), words),
            facts.log().notes()));
  }

  private SheetPart<?> pieces() {
    return new SheetPart<>(
        "sheet.pieces.name",
        "sheet.term.about-pieces",
        "PieceTable",
        facts.chosen(PieceColumns.all(facts.lookup(), words)),
        facts.pieces(),
        facts.pieceCount(),
        true,
        OddMark::draw);
  }

  private void onlyFilled(SheetPart<?> part) {
    if (part.count() > 0) {
      parts.add(part);
    }
  }
}
