package walebook.desk.lessons;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.KitCloth;
import walebook.act.lesson.KitPriceBook;
import walebook.act.lesson.KitReckoned;
import walebook.act.lesson.KitTyped;
import walebook.act.lesson.PlannedCloths;
import walebook.act.lesson.WorkOutKit;
import walebook.act.print.PrintFile;
import walebook.act.print.PrintKit;
import walebook.act.print.PrintPaper;
import walebook.desk.common.FormFields;
import walebook.desk.common.PickFile;
import walebook.desk.common.PrintedWords;
import walebook.desk.common.Session;
import walebook.drawing.CuttingPlanPicture;
import walebook.drawing.Palette;
import walebook.drawing.Svg;
import walebook.kit.ClothToBuy;
import walebook.kit.Kit;
import walebook.lesson.LessonPack;
import walebook.lesson.Plan;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.record.Lesson;
import walebook.record.SchoolClass;

/** The kit of a pack for a class: what is typed, the list, and the cutting plans. */
public final class KitViewModel {
  static final String STUDENTS = "students";
  static final String SPARE = "spare";
  static final String MARGIN = "margin";
  private static final String CLOTH = "cloth-";
  private static final String WIDTH = "width-";
  private static final String WASH = "wash-";

  private final Session session;
  private final LessonPack pack;
  private final @Nullable Lesson lesson;
  private final @Nullable SchoolClass schoolClass;
  private final FormFields fields;
  private final KitPriceFields prices;
  private final ReadOnlyObjectWrapper<@Nullable Kit> kit = new ReadOnlyObjectWrapper<>(this, "kit");
  private final ObjectProperty<String> paper = new SimpleObjectProperty<>(this, "paper", "a4");
  private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper(this, "says", "");
  private Unit unit = Unit.CM;

  private record Room(
      int students, Unit unit, Map<String, UUID> cloths, Map<String, String> prices) {}

  /**
   * The kit of a pack.
   *
   * @param lesson that took it up, whose cloths are filled in; null for none
   */
  public KitViewModel(Session session, LessonPack pack, @Nullable Lesson lesson) {
    this.session = session;
    this.pack = pack;
    this.lesson = lesson;
    this.schoolClass = session.schoolClassProperty().get();
    prices = new KitPriceFields(pack, session.words().say("desk.lessons.kit.thread"));
    List<String> names = new ArrayList<>(List.of(STUDENTS, SPARE, MARGIN));
    for (Plan.ClothSlot each : pack.plan().cloths()) {
      names.addAll(List.of(CLOTH + each.slot(), WIDTH + each.slot(), WASH + each.slot()));
    }
    names.addAll(prices.names());
    fields = new FormFields(() -> {}, names.toArray(String[]::new));
    fields.put(Map.of(SPARE, KitTyped.USUAL_SPARE));
    SchoolClass of = schoolClass;
    session.run(
        progress -> {
          Map<String, UUID> cloths =
              lesson == null ? Map.of() : PlannedCloths.of(session.book(), lesson, pack);
          return new Room(
              of == null ? 0 : session.book().enrolments().studentsOf(of.id()).size(),
              session.book().info().lengthUnit(),
              cloths,
              new KitPriceBook(session.book(), pack, cloths).known());
        },
        room -> {
          unit = room.unit();
          room.cloths().forEach(this::fillIn);
          prices.fill(fields, room.prices());
          for (Plan.ClothSlot each : pack.plan().cloths()) {
            cloth(each).text().addListener((from, old, now) -> priceOfOther());
          }
          if (fields.text(STUDENTS).isEmpty() && room.students() > 0) {
            fields.field(STUDENTS).text().set(String.valueOf(room.students()));
          }
        });
  }

  /** Another cloth of the room has another price. */
  private void priceOfOther() {
    Map<String, UUID> cloths = cloths();
    session.run(
        progress -> new KitPriceBook(session.book(), pack, cloths).known(),
        known -> {
          if (cloths.equals(cloths())) {
            prices.fill(fields, known);
          }
        });
  }

  private void fillIn(String slot, UUID cloth) {
    FormFields.Field field = fields.field(CLOTH + slot);
    if (field.text().get().isEmpty()) {
      field.text().set(cloth.toString());
    }
  }

  /** True when what is typed here belongs to that pack and lesson in the class in hand. */
  boolean isOf(LessonPack other, @Nullable Lesson taken) {
    return pack.files().contentHash().equals(other.files().contentHash())
        && Objects.equals(lesson, taken)
        && Objects.equals(schoolClass, session.schoolClassProperty().get());
  }

  public LessonPack pack() {
    return pack;
  }

  /** A field by the name of what is typed in it. */
  FormFields.Field field(String name) {
    return fields.field(name);
  }

  /** The cloth of the room that stands for one of the plan's; its text is the cloth's key. */
  public FormFields.Field cloth(Plan.ClothSlot slot) {
    return fields.field(CLOTH + slot.slot());
  }

  public FormFields.Field width(Plan.ClothSlot slot) {
    return fields.field(WIDTH + slot.slot());
  }

  public FormFields.Field wash(Plan.ClothSlot slot) {
    return fields.field(WASH + slot.slot());
  }

  /** The name of the field for the price of a metre of a cloth. */
  String priceOf(Plan.ClothSlot slot) {
    return KitPriceFields.of(slot);
  }

  /** The prices of what is no cloth, in the order of the pack; thread that no pack names last. */
  List<KitPriceFields.Price> prices() {
    return prices.others();
  }

  /** The kit as last worked out, or null. */
  public ReadOnlyObjectProperty<@Nullable Kit> kitProperty() {
    return kit.getReadOnlyProperty();
  }

  /** What stands in the way and belongs to no field, or what was saved. */
  public ReadOnlyStringProperty saysProperty() {
    return says.getReadOnlyProperty();
  }

  /** The unit lengths are typed in. */
  public Unit unit() {
    return unit;
  }

  /** The unit cloth is shown in. */
  public Unit shownIn() {
    return WorkOutKit.shownIn(unit);
  }

  /** Works the kit out. */
  public void workOut() {
    Map<String, String> texts = prices.texts(fields);
    KitTyped typed =
        new KitTyped(
            fields.text(STUDENTS),
            fields.text(SPARE),
            fields.text(MARGIN),
            pairs(WIDTH),
            pairs(WASH),
            prices.typed(texts));
    Map<String, UUID> cloths = cloths();
    session.run(
        progress -> {
          Answer<Kit> answer =
              WorkOutKit.of(
                  pack,
                  reckoned(),
                  KitCloth.in(session.book(), cloths),
                  typed,
                  session.tables(),
                  unit,
                  1);
          if (answer.isGood()) {
            new KitPriceBook(session.book(), pack, cloths).keep(typed);
          }
          return answer;
        },
        answer -> {
          if (answer.isGood()) {
            prices.kept(texts);
          }
          show(answer);
        });
  }

  private Map<String, UUID> cloths() {
    Map<String, UUID> cloths = new HashMap<>();
    for (Plan.ClothSlot each : pack.plan().cloths()) {
      String id = fields.text(CLOTH + each.slot());
      if (!id.isEmpty()) {
        cloths.put(each.slot(), UUID.fromString(id));
      }
    }
    return cloths;
  }

  /** From the plan that was dealt; before that from who is in the class. */
  private KitReckoned reckoned() {
    if (lesson != null) {
      return KitReckoned.dealt(session.book(), lesson, pack);
    }
    return schoolClass == null
        ? KitReckoned.standard(pack.plan())
        : KitReckoned.roster(pack.plan(), session.book().enrolments().studentsOf(schoolClass.id()));
  }

  private List<String> pairs(String prefix) {
    List<String> pairs = new ArrayList<>();
    for (Plan.ClothSlot each : pack.plan().cloths()) {
      String text = fields.text(prefix + each.slot()).strip();
      if (!text.isEmpty()) {
        pairs.add(each.slot() + "=" + text);
      }
    }
    return pairs;
  }

  private void show(Answer<Kit> answer) {
    List<Problem> placed = answer.problems().stream().map(this::atField).toList();
    fields.show(placed);
    String others =
        placed.stream()
            .filter(each -> !isField(each))
            .map(session.words()::say)
            .collect(Collectors.joining(" "));
    // The list may be scrolled to, and the field that stands in the way out of sight.
    boolean above = placed.stream().anyMatch(this::isField);
    says.set(others.isEmpty() && above ? session.words().say("desk.lessons.kit.mend") : others);
    if (answer.isGood()) {
      kit.set(answer.value());
    }
  }

  private boolean isField(Problem problem) {
    return problem.place() instanceof Place.Field field && fields.typed().containsKey(field.name());
  }

  /** A width's, a wash's or a price's problem shows at the field in which the text stands. */
  private Problem atField(Problem problem) {
    if (isField(problem)) {
      return problem;
    }
    List<String> names = new ArrayList<>();
    for (Plan.ClothSlot each : pack.plan().cloths()) {
      names.addAll(List.of(WIDTH + each.slot(), WASH + each.slot()));
    }
    names.addAll(prices.names());
    for (String name : names) {
      if (fields.text(name).strip().equals(problem.found())) {
        return new Problem(
            problem.code(), Place.field(name), problem.found(), problem.wanted(), problem.weight());
      }
    }
    return problem;
  }

  /** Key of the size of paper that the list is printed on. */
  public ObjectProperty<String> paperProperty() {
    return paper;
  }

  /** Prints the list and its cutting plans into a file, where the person says. */
  public void print() {
    Kit now = kit.get();
    String name = pack.about().name() + "-" + PrintPaper.Kind.KIT.key() + PrintFile.ENDING;
    Path file = now == null ? null : session.files().save(PickFile.Kind.PAPER, name);
    if (now == null || file == null) {
      return;
    }
    PrintKit print = new PrintKit(session.words());
    String size = paper.get();
    session.run(
        progress ->
            print.print(
                now,
                pack,
                lesson == null ? null : print.head(session.book(), lesson),
                unit,
                size,
                new PrintFile(file, true, progress::at)),
        answer -> says.set(PrintedWords.of(session.words(), answer)));
  }

  /** Saves one cutting plan as a picture, where the person says. */
  public void save(ClothToBuy cloth) {
    Path file = session.files().save(PickFile.Kind.DRAWING, "cutting-plan.svg");
    if (file == null) {
      return;
    }
    CuttingPlanPicture drawing = new CuttingPlanPicture(cloth.name(), cloth.plan(), shownIn());
    String svg =
        Svg.of(drawing.at(drawing.ownWidth(), session.words()), Palette.LIGHT, session.words());
    session
        .background()
        .run(
            progress -> write(file, svg),
            written -> says.set(session.words().say("desk.lessons.kit.saved", written)),
            fault -> {
              if (fault instanceof UncheckedIOException) {
                says.set(session.words().say("desk.lessons.kit.not-saved", file));
              } else {
                session.unexpected(fault);
              }
            });
  }

  private static Path write(Path file, String text) {
    try {
      return Files.writeString(file, text, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
