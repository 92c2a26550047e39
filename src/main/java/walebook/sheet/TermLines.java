package walebook.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.compare.ClassProgress;
import walebook.compare.TalliedRow;
import walebook.words.Words;

/** The lines of the summary, kept as columns so that they are explained like all others. */
final class TermLines {
  private TermLines() {}

  static List<Column<TermFacts>> all(Words words) {
    return Stream.of(named(words), term(), people(), pieces(), planned(), kits(), written(words))
        .flatMap(List::stream)
        .toList();
  }

  private static List<Column<TermFacts>> named(Words words) {
    return List.of(
        Column.of(
            "invented",
            "sheet.term.invented",
            "",
            "sheet.term.invented.says",
            Origin.WRITTEN,
            Format.LONG_TEXT,
            facts -> Value.of(facts.book().invented() ? words.say("sheet.invented") : null)),
        Column.text(
            "book",
            "sheet.term.book",
            "sheet.term.book.says",
            Origin.TYPED,
            Format.LONG_TEXT,
            facts -> facts.book().name()),
        Column.text(
            "class",
            "sheet.term.class",
            "sheet.term.class.says",
            Origin.TYPED,
            Format.LONG_TEXT,
            facts -> facts.schoolClass().name()),
        Column.text(
            "meets",
            "sheet.term.meets",
            "sheet.term.meets.says",
            Origin.TYPED,
            Format.LONG_TEXT,
            facts -> facts.schoolClass().meets()));
  }

  private static List<Column<TermFacts>> term() {
    return List.of(
        Column.text(
            "term",
            "sheet.term.term",
            "sheet.term.term.says",
            Origin.TYPED,
            Format.LONG_TEXT,
            facts -> facts.term() == null ? null : facts.term().name()),
        Column.of(
            "from",
            "sheet.term.from",
            "",
            "sheet.term.from.says",
            Origin.TYPED,
            Format.DAY,
            facts -> Value.of(facts.term() == null ? null : facts.term().startsOn())),
        Column.of(
            "to",
            "sheet.term.to",
            "",
            "sheet.term.to.says",
            Origin.TYPED,
            Format.DAY,
            facts -> Value.of(facts.term() == null ? null : facts.term().endsOn())),
        Column.text(
            "tutor",
            "sheet.term.tutor",
            "sheet.term.tutor.says",
            Origin.PERSON,
            Format.LONG_TEXT,
            facts -> facts.tutor() == null ? null : facts.tutor().name()));
  }

  private static List<Column<TermFacts>> people() {
    return List.of(
        Column.whole(
            "enrolled",
            "sheet.term.enrolled",
            "sheet.term.enrolled.says",
            Origin.COUNT,
            facts -> facts.students().size()),
        Column.whole(
            "sewing",
            "sheet.term.sewing",
            "sheet.term.sewing.says",
            Origin.COUNT,
            facts -> facts.comparison().students()),
        Column.whole(
            "lessons",
            "sheet.term.lessons",
            "sheet.term.lessons.says",
            Origin.COUNT,
            facts -> facts.progress().lessons().size()));
  }

  private static List<Column<TermFacts>> pieces() {
    return List.of(
        Column.whole(
            "pieces",
            "sheet.term.pieces",
            "sheet.term.pieces.says",
            Origin.COUNT,
            facts -> facts.pieceCount()),
        Column.whole(
            "gave",
            "sheet.term.gave",
            "sheet.term.gave.says",
            Origin.COUNT,
            facts -> ended(facts, TalliedRow::gave)),
        Column.whole(
            "held",
            "sheet.term.held",
            "sheet.term.held.says",
            Origin.COUNT,
            facts -> ended(facts, TalliedRow::held)),
        Column.whole(
            "settings",
            "sheet.term.settings",
            "sheet.term.settings.says",
            Origin.COUNT,
            facts -> facts.comparison().rows().size()),
        Column.whole(
            "aside",
            "sheet.term.aside",
            "sheet.term.aside.says",
            Origin.COUNT,
            facts -> facts.comparison().setAside()),
        Column.whole(
            "readings-aside",
            "sheet.term.readings-aside",
            "sheet.term.readings-aside.says",
            Origin.COUNT,
            facts -> facts.readingsAside()),
        Column.whole(
            "odd",
            "sheet.term.odd",
            "sheet.term.odd.says",
            Origin.ODD,
            facts -> facts.findings().unseen()),
        Column.whole(
            "odd-readings",
            "sheet.term.odd-readings",
            "sheet.term.odd-readings.says",
            Origin.ODD,
            facts -> facts.findings().unseenReadings()));
  }

  private static List<Column<TermFacts>> planned() {
    return List.of(
        Column.whole(
            "plan-logged",
            "sheet.term.plan-logged",
            "sheet.term.plan-logged.says",
            Origin.PLAN,
            facts -> plan(facts, ClassProgress.Row::logged)),
        Column.whole(
            "plan",
            "sheet.term.plan",
            "sheet.term.plan.says",
            Origin.PLAN,
            facts -> plan(facts, ClassProgress.Row::planned)));
  }

  private static List<Column<TermFacts>> kits() {
    return List.of(
        Column.figure(
            "kits",
            "sheet.term.kits",
            "",
            "sheet.term.kits.says",
            Origin.COST,
            Format.HUNDREDTHS,
            TermLines::cost));
  }

  /** Null where nothing has a price. */
  private static @Nullable Number cost(TermFacts facts) {
    double[] costs =
        facts.extras().kit().stream()
            .map(KitRow::cost)
            .filter(Objects::nonNull)
            .mapToDouble(Double::doubleValue)
            .toArray();
    return costs.length == 0 ? null : Arrays.stream(costs).sum();
  }

  private static List<Column<TermFacts>> written(Words words) {
    return List.of(
        Column.text(
            "people",
            "sheet.term.people",
            "sheet.term.people.says",
            Origin.WRITTEN,
            Format.LONG_TEXT,
            facts -> words.say(facts.names() ? "sheet.with-names" : "sheet.with-codes")),
        Column.of(
            "written",
            "sheet.term.written",
            "",
            "sheet.term.written.says",
            Origin.WRITTEN,
            Format.MOMENT,
            facts -> new Value.Moment(facts.written())));
  }

  private static int ended(TermFacts facts, ToIntFunction<TalliedRow> of) {
    return facts.comparison().rows().stream().mapToInt(of).sum();
  }

  private static int plan(TermFacts facts, ToIntFunction<ClassProgress.Row> of) {
    return facts.progress().rows().stream().mapToInt(of).sum();
  }
}
