package walebook.act.bring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import walebook.act.bring.match.DayOrder;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.sheet.in.InRow;

/** Saves readings, washes or notes row by row, each with the checks of its form. */
final class LogRows<T> {
  private final Book book;
  private final BringPlan plan;
  private final Map<String, Integer> places;
  private final DayOrder order;
  private final LogKind<T> kind;

  /**
   * How many of the book's own are left that a row may be: the same was measured twice at times.
   */
  private final Map<Object, Integer> there = new HashMap<>();

  LogRows(Book book, BringPlan plan, Map<String, Integer> places, DayOrder order, LogKind<T> kind) {
    this.book = book;
    this.plan = plan;
    this.places = places;
    this.order = order;
    this.kind = kind;
    kind.there().forEach(each -> there.merge(kind.likeness(each), 1, Integer::sum));
  }

  List<RowFate> run(UUID step, By by) {
    List<RowFate> fates = new ArrayList<>();
    for (InRow each : plan.sheet().rows()) {
      fates.add(fate(each, step, by));
    }
    return fates;
  }

  private RowFate fate(InRow row, UUID step, By by) {
    String about = kind.about(new CellReader(plan, places, order, row));
    CellReader cells = new CellReader(plan, places, order, row);
    Answer<T> read = kind.read(cells);
    List<Problem> problems = problems(cells, read);
    if (!read.isGood() || problems.stream().anyMatch(Problem::refuses)) {
      return new RowFate(row.number(), RowFate.Fate.REFUSED, about, problems);
    }
    Object likeness = kind.likeness(read.value());
    int left = there.getOrDefault(likeness, 0);
    if (left > 0) {
      there.put(likeness, kind.isOneForAllAlike() ? left : left - 1);
      return new RowFate(row.number(), RowFate.Fate.THERE, about, List.of());
    }
    if (!problems.isEmpty() && !plan.sure()) {
      return new RowFate(row.number(), RowFate.Fate.ASKED, about, problems);
    }
    kind.save(read.value());
    if (kind.isOneForAllAlike()) {
      there.merge(likeness, 1, Integer::sum);
    }
    book.history().underStep(step, by);
    return new RowFate(row.number(), RowFate.Fate.NEW, about, List.of());
  }

  /** The cells' own problems, then the form's, each moved to the cell that it is about. */
  private List<Problem> problems(CellReader cells, Answer<T> read) {
    List<Problem> all = new ArrayList<>(cells.problems().stream().distinct().toList());
    for (Problem each : read.problems()) {
      Place place =
          each.place() instanceof Place.Field field
              ? cells.place(kind.column(field.name()))
              : each.place();
      // A cell that could not be read is not also missing.
      if (all.stream().noneMatch(other -> other.place().equals(place))) {
        all.add(new Problem(each.code(), place, each.found(), each.wanted(), each.weight()));
      }
    }
    return all;
  }
}
