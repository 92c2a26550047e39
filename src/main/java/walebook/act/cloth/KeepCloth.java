package walebook.act.cloth;

import java.time.Clock;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.act.Form;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.problem.Answer;
import walebook.quantity.Show;
import walebook.record.Cloth;
import walebook.record.Edge;
import walebook.record.Stamp;

/**
 * Adds a cloth to the room or changes its card. Fields: cloth-name, cloth-kind, fibre, elastane,
 * mass, cloth-width, thickness, frays, sheds, ladders, curls, needs-finishing, remark, retired.
 */
public final class KeepCloth {
  private static final double USUAL_MASS = 800;
  private static final double USUAL_WIDTH_MM = 2500;
  private static final double LEAST_USUAL_WIDTH_MM = 100;
  private static final double USUAL_THICKNESS_MM = 8;

  private final Book book;
  private final Clock clock;

  public KeepCloth(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /**
   * Saves a card.
   *
   * @param before the cloth as it was, or null for a new one
   * @param confirmed true when what is unlikely was agreed to
   */
  public Answer<Cloth> keep(@Nullable Cloth before, Map<String, String> typed, boolean confirmed) {
    Answer<Cloth> read = read(before, typed);
    if (!read.isGood() || (!read.problems().isEmpty() && !confirmed)) {
      return Answer.bad(read.problems());
    }
    if (before == null) {
      book.cloths().add(read.value());
    } else {
      book.cloths().update(read.value());
    }
    return Answer.good(read.value());
  }

  /**
   * Reads a card without saving it.
   *
   * @param before the cloth as it was, or null for a new one
   */
  public Answer<Cloth> read(@Nullable Cloth before, Map<String, String> typed) {
    Form form = new Form(typed, book.info().lengthUnit());
    String name = form.needed("cloth-name");
    if (isTaken(name, before)) {
      form.refuse("cloth-name", "name.taken", "");
    }
    Stamp stamp =
        before == null ? Stamp.fresh(clock.instant()) : before.stamp().next(clock.instant());
    Double elastane = form.number("elastane", 0, Double.POSITIVE_INFINITY);
    if (elastane != null && elastane > 100) {
      form.refuse("elastane", "number.outside", "0 – 100");
      elastane = null;
    }
    Double width = form.length("cloth-width", USUAL_WIDTH_MM);
    if (width != null && width < LEAST_USUAL_WIDTH_MM) {
      form.ask("cloth-width", "number.unlikely-small", Show.mm(LEAST_USUAL_WIDTH_MM));
    }
    Cloth cloth =
        new Cloth(
            before == null ? Ids.next() : before.id(),
            name,
            form.text("cloth-kind"),
            form.text("fibre"),
            elastane,
            form.number("mass", 1, USUAL_MASS),
            width,
            form.length("thickness", USUAL_THICKNESS_MM),
            new Edge(
                form.yes("frays"),
                form.yes("sheds"),
                form.yes("ladders"),
                form.yes("curls"),
                form.yes("needs-finishing")),
            form.text("remark"),
            Boolean.TRUE.equals(form.yes("retired")),
            stamp);
    return form.isRefused()
        ? Answer.bad(form.problems())
        : new Answer.Good<>(cloth, form.problems());
  }

  private boolean isTaken(String name, @Nullable Cloth before) {
    return book.cloths().all().stream()
        .anyMatch(
            each ->
                each.name().equalsIgnoreCase(name)
                    && (before == null || !each.id().equals(before.id())));
  }
}
