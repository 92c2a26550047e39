package walebook.desk.classroom;

import java.util.List;
import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.AskKnown;
import walebook.book.Book;
import walebook.compare.FairComparison;
import walebook.compare.FairQuestion;
import walebook.compare.known.KnownFindings;
import walebook.compare.known.KnownSoFar;
import walebook.drawing.DotPlot;
import walebook.record.Cloth;
import walebook.statistics.Proportion;
import walebook.words.Words;

/** The same question over all classes and terms of the book. */
public final class TermsViewModel {
  private final FiltersViewModel filters;
  private final Asking<Known> known;

  /**
   * What is known so far.
   *
   * @param plot all classes together, by setting; null when no piece has a value
   */
  record Known(List<String> says, List<Line> lines, @Nullable DotPlot plot) {}

  /** One class of the table. */
  record Line(
      String term,
      String className,
      int pieces,
      int students,
      int setAside,
      String mean,
      String half,
      String held) {}

  public TermsViewModel(FiltersViewModel filters) {
    this.filters = filters;
    Words words = filters.session().words();
    Book book = filters.session().book();
    known =
        new Asking<>(
            filters,
            (in, hidden) -> {
              UUID clothId = filters.which(in.id(), hidden).clothId();
              FairQuestion question = filters.question();
              return () -> known(book, question, clothId, hidden, words);
            });
  }

  FiltersViewModel filters() {
    return filters;
  }

  Asking<Known> asking() {
    return known;
  }

  ReadOnlyObjectProperty<@Nullable Known> foundProperty() {
    return known.foundProperty();
  }

  private static Known known(
      Book book, FairQuestion question, @Nullable UUID clothId, boolean hidden, Words words) {
    Cloth cloth = clothId == null ? null : book.cloths().find(clothId);
    KnownSoFar found =
        new AskKnown(List.of(book))
            .ask(question, cloth == null ? null : cloth.name(), null, hidden);
    FairComparison together = found.together();
    FairDrawn drawn = new FairDrawn(words);
    List<String> says =
        KnownFindings.of(
                found,
                levels -> drawn.setting(together.factors(), levels),
                grain -> words.say("act.class.grain." + grain.key()))
            .stream()
            .map(words::say)
            .toList();
    return new Known(
        says, found.classes().stream().map(TermsViewModel::line).toList(), drawn.plot(together));
  }

  private static Line line(KnownSoFar.ClassLine each) {
    Proportion held = each.held();
    return new Line(
        each.term(),
        each.className(),
        each.pieces(),
        each.students(),
        each.setAside(),
        each.mean() == null ? "–" : FairViewModel.number(each.mean().mean()),
        FairViewModel.number(each.median()),
        held == null ? "–" : held.count() + " / " + held.n());
  }
}
