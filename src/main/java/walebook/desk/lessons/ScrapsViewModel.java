package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.ReadScraps;
import walebook.desk.common.FormFields;
import walebook.desk.common.Session;
import walebook.kit.CuttingPlan;
import walebook.kit.Kit;
import walebook.kit.Scrap;
import walebook.kit.ScrapAnswer;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Show;
import walebook.quantity.Unit;

/**
 * Whether the pieces that a kit cuts from one cloth come out of scraps: rows of them, an answer.
 */
public final class ScrapsViewModel {
  /** Sizes of scraps that can be told apart; each may be there several times. */
  static final int ROWS = 12;

  private static final String CUT = "cut";
  private static final long SEED = 1;

  private final Session session;
  private final KitViewModel kit;
  private final FormFields fields;
  private final ReadOnlyObjectWrapper<@Nullable ScrapAnswer> answer =
      new ReadOnlyObjectWrapper<>(this, "answer");
  private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper(this, "says", "");

  /** Scraps with the same pieces laid the same way. */
  record Alike(Scrap scrap, CuttingPlan plan, int count) {}

  public ScrapsViewModel(Session session, KitViewModel kit) {
    this.session = session;
    this.kit = kit;
    List<String> names = new ArrayList<>(List.of(CUT));
    for (int i = 0; i < ROWS; i++) {
      ReadScraps.Row row = ReadScraps.Row.fields(i);
      names.addAll(List.of(row.across(), row.along(), row.count()));
    }
    // An answer about other scraps than those that now stand there would mislead.
    fields = new FormFields(this::forget, names.toArray(String[]::new));
    kit.kitProperty()
        .addListener(
            (from, old, now) -> {
              forget();
              field(CUT).text().set("0");
            });
    kit.field(KitViewModel.MARGIN).text().addListener((from, old, now) -> forget());
    field(CUT).text().set("0");
  }

  private void forget() {
    answer.set(null);
    says.set("");
  }

  FormFields.Field field(String name) {
    return fields.field(name);
  }

  /** Which of the kit's cloths the pieces are meant for: its number from 0. */
  public FormFields.Field cut() {
    return fields.field(CUT);
  }

  /** What can be asked about: everything that is cut, by the cloth it is cut from. */
  List<Kit.Cut> cuts() {
    Kit now = kit.kitProperty().get();
    return now == null ? List.of() : now.cuts();
  }

  /** The last answer; null when none was asked for or something was changed since. */
  public ReadOnlyObjectProperty<@Nullable ScrapAnswer> answerProperty() {
    return answer.getReadOnlyProperty();
  }

  /** The answer in a sentence, or what stands in its way and belongs to no field. */
  public ReadOnlyStringProperty saysProperty() {
    return says.getReadOnlyProperty();
  }

  /** The unit lengths are typed in. */
  public Unit unit() {
    return kit.unit();
  }

  /** The unit cloth is shown in. */
  public Unit shownIn() {
    return kit.shownIn();
  }

  /** Asks whether the pieces come out. */
  public void ask() {
    List<Kit.Cut> cuts = cuts();
    String chosen = fields.text(CUT);
    if (cuts.isEmpty() || chosen.isEmpty()) {
      return;
    }
    Kit.Cut cut = cuts.get(Math.min(Integer.parseInt(chosen), cuts.size() - 1));
    List<ReadScraps.Row> rows =
        IntStream.range(0, ROWS).mapToObj(ReadScraps.Row::fields).map(this::typed).toList();
    String margin = kit.field(KitViewModel.MARGIN).text().get();
    session.run(progress -> ReadScraps.answer(cut, rows, margin, kit.unit(), SEED), this::show);
  }

  private ReadScraps.Row typed(ReadScraps.Row names) {
    return new ReadScraps.Row(
        fields.text(names.across()), fields.text(names.along()), fields.text(names.count()));
  }

  private void show(Answer<ScrapAnswer> found) {
    fields.show(found.problems());
    answer.set(found.isGood() ? found.value() : null);
    says.set(
        found.isGood()
            ? session.words().say(found.value().says())
            : found.problems().stream()
                .filter(each -> !isField(each))
                .map(session.words()::say)
                .collect(Collectors.joining(" ")));
  }

  private boolean isField(Problem problem) {
    return problem.place() instanceof Place.Field field && fields.typed().containsKey(field.name());
  }

  /** What did not come out, a line for each kind of piece. */
  List<String> missing() {
    ScrapAnswer now = answer.get();
    List<String> lines = new ArrayList<>();
    for (int i = 0; now != null && i < now.missing().size(); i++) {
      int count = now.missing().get(i);
      if (count > 0) {
        String piece = now.plans().get(0).pieces().get(i).name();
        lines.add(session.words().say("desk.lessons.kit.scraps.missing", count, piece));
      }
    }
    return lines;
  }

  /** The scraps that something is cut from, those laid alike together. */
  List<Alike> drawn() {
    ScrapAnswer now = answer.get();
    List<Alike> all = new ArrayList<>();
    for (int i = 0; now != null && i < now.scraps().size(); i++) {
      CuttingPlan plan = now.plans().get(i);
      if (plan.placed().isEmpty()) {
        continue;
      }
      int same =
          IntStream.range(0, all.size())
              .filter(at -> all.get(at).plan().equals(plan))
              .findFirst()
              .orElse(-1);
      if (same < 0) {
        all.add(new Alike(now.scraps().get(i), plan, 1));
      } else {
        all.set(same, new Alike(all.get(same).scrap(), plan, all.get(same).count() + 1));
      }
    }
    return all;
  }

  /** What stands over a drawing. */
  String title(Alike each) {
    String size =
        Show.length(each.scrap().acrossMm(), shownIn())
            + " × "
            + Show.length(each.scrap().alongMm(), shownIn());
    return each.count() == 1
        ? session.words().say("desk.lessons.kit.scraps.one", size)
        : session.words().say("desk.lessons.kit.scraps.several", each.count(), size);
  }
}
