package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.AskOdd;
import walebook.act.classroom.CompareFair;
import walebook.act.classroom.CorrectReading;
import walebook.act.classroom.MarkReading;
import walebook.act.classroom.SettingWords;
import walebook.compare.odd.OddFindings;
import walebook.compare.odd.OddReading;
import walebook.desk.common.FormFields;
import walebook.desk.common.Latest;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.By;
import walebook.record.ClothReading;
import walebook.record.PieceCode;
import walebook.record.ValueMark;
import walebook.words.Words;
import walebook.working.Message;

/** Odd readings and what the tutor makes of them: kept, mistyped or set aside, each undone. */
public final class OddViewModel extends AskingModel<List<OddViewModel.Row>> {
  static final String RIGHT = "right";
  static final String REASON = "reason";
  private static final String GRADE = "grade";

  private final Session session;
  private final Latest choosing;
  private final Words words;
  private final MarkReading mark;
  private final CorrectReading correct;
  private final FormFields form;
  private final ObjectProperty<String> field = new SimpleObjectProperty<>(this, "field", "");
  private final ObjectProperty<@Nullable Row> chosen = new SimpleObjectProperty<>(this, "chosen");
  private final ObjectProperty<Notice> notice =
      new SimpleObjectProperty<>(this, "notice", Notice.NONE);

  private Standing standing = new Standing(Map.of(), Unit.MM);

  /**
   * What stands in the fields of the chosen value.
   *
   * @param numbers lengths in mm, a look as its grade; without those that are not noted
   * @param unit in which lengths are typed
   */
  private record Standing(Map<String, Double> numbers, Unit unit) {}

  /**
   * An odd value.
   *
   * @param what the piece's code, or the cloth that was read
   * @param value what kind of value
   * @param number the value
   * @param why reasons, the first first
   * @param rule the rule that it broke, in figures; may be empty
   * @param marked what was made of it; empty while nobody looked
   */
  record Row(
      OddReading odd,
      String what,
      String value,
      String number,
      List<String> why,
      String rule,
      String marked) {}

  public OddViewModel(FiltersViewModel filters) {
    super(filters);
    this.session = session();
    this.choosing = new Latest(session);
    this.words = words();
    this.mark = new MarkReading(session.book(), session.clock());
    this.correct = new CorrectReading(session.book(), session.clock());
    this.form = new FormFields(() -> {}, RIGHT, REASON);
    // A yes was for the number that was asked about, not for another one of the piece.
    field.addListener((from, old, now) -> form.show(List.of()));
    foundProperty().addListener((from, old, now) -> again(now));
  }

  @Override
  Asking.Work<List<Row>> ask(CompareFair.Which which) {
    AskOdd act = new AskOdd(session.book());
    return progress -> act.ask(which).stream().map(each -> row(each, words)).toList();
  }

  /** The value looked at, or null. */
  ObjectProperty<@Nullable Row> chosenProperty() {
    return chosen;
  }

  FormFields form() {
    return form;
  }

  /** Which number was mistyped. */
  ObjectProperty<String> fieldProperty() {
    return field;
  }

  /** What was marked last, with undo. */
  ObjectProperty<Notice> noticeProperty() {
    return notice;
  }

  /** The numbers that the chosen value hangs on. */
  List<String> fields() {
    Row row = chosen.get();
    return row == null ? List.of() : CorrectReading.fields(row.odd().value());
  }

  /** How a number is called, with its unit and what stands there now. */
  String fieldName(String name) {
    String called = words.has("problem.field." + name) ? words.say("problem.field." + name) : name;
    Double now = standing.numbers().get(name);
    if (name.equals(GRADE)) {
      return now == null
          ? words.say("desk.class.odd.look-none", called)
          : words.say("desk.class.odd.look-now", called, Show.fixed(now, 0));
    }
    Unit unit = standing.unit();
    return now == null
        ? words.say("desk.class.odd.length-none", called, unit.sign())
        : words.say("desk.class.odd.length-now", called, unit.sign(), number(now, unit));
  }

  private static String number(double mm, Unit unit) {
    return Show.upTo(mm / unit.inBase(), unit == Unit.MM ? 1 : 2);
  }

  /** What is to be typed in place of the number, with its unit. */
  String rightName() {
    return fields().contains(GRADE)
        ? words.say("desk.class.odd.right-look")
        : words.say("desk.class.odd.right", standing.unit().sign());
  }

  /** Looks at a value; it is chosen once what stands in its fields was read. */
  void choose(@Nullable Row row) {
    choosing.drop();
    if (row == null) {
      choose(null, new Standing(Map.of(), Unit.MM));
      return;
    }
    OddReading odd = row.odd();
    choosing.read(
        progress ->
            new Standing(
                correct.standing(odd.value(), odd.targetId()), session.book().info().lengthUnit()),
        read -> choose(row, read));
  }

  private void choose(@Nullable Row row, Standing read) {
    standing = read;
    form.put(Map.of());
    List<String> all = row == null ? List.of() : CorrectReading.fields(row.odd().value());
    field.set(all.isEmpty() ? "" : all.get(0));
    chosen.set(row);
  }

  /** Shows the piece, or the cloth of a reading, in its own place. */
  void openChosen() {
    Row row = chosen.get();
    if (row == null) {
      return;
    }
    UUID target = row.odd().targetId();
    if (!row.odd().value().isOfCloth()) {
      session.wish(new Wish("pieces", Wish.What.OPEN, target));
      return;
    }
    session.run(
        progress -> Optional.ofNullable(session.book().clothLog().find(target)),
        found ->
            found
                .map(ClothReading::clothId)
                .ifPresent(cloth -> session.wish(new Wish("cloths", Wish.What.OPEN, cloth))));
  }

  void keep() {
    put((odd, by) -> mark.keep(odd.value(), odd.targetId(), by), "desk.class.odd.said-kept");
  }

  void setAside() {
    String reason = form.text(REASON);
    put(
        (odd, by) -> mark.setAside(odd.value(), odd.targetId(), reason, by),
        "desk.class.odd.said-aside");
  }

  void mistyped() {
    String right = form.text(RIGHT);
    String name = field.get();
    boolean confirmed = form.isConfirmed();
    put(
        (odd, by) -> mark.mistyped(odd.value(), odd.targetId(), name, right, confirmed, by),
        "desk.class.odd.said-mistyped");
  }

  /** One of the marks. */
  @FunctionalInterface
  private interface Marking {
    Answer<MarkReading.Marked> mark(OddReading odd, By by);
  }

  private void put(Marking marking, String saidKey) {
    Row row = chosen.get();
    if (row == null) {
      return;
    }
    By by = by();
    session.run(progress -> marking.mark(row.odd(), by), answer -> marked(answer, row, saidKey));
  }

  private void marked(Answer<MarkReading.Marked> answer, Row row, String saidKey) {
    if (!answer.isGood()) {
      form.show(answer.problems().stream().map(this::atItsField).toList());
      return;
    }
    UUID step = answer.value().stepId();
    choose(null);
    notice.set(new Notice(words.say(saidKey, row.what()), () -> undo(step)));
    session.changed();
  }

  /** What is asked of another length comes of the one that was typed. */
  private Problem atItsField(Problem problem) {
    boolean hangs = !problem.refuses() && problem.place() instanceof Place.Field;
    String from = hangs ? ((Place.Field) problem.place()).name() : field.get();
    return FieldOf.renamed(problem, from, RIGHT);
  }

  private void undo(UUID step) {
    By by = by();
    session.run(
        progress -> mark.undo(step, by),
        answer -> {
          String says =
              answer.isGood()
                  ? words.say("desk.class.odd.undone")
                  : words.say(answer.problems().get(0));
          notice.set(new Notice(says, null));
          session.changed();
        });
  }

  private By by() {
    var student = session.studentProperty().get();
    return student == null ? By.NOBODY : new By(student.name(), student.id(), null);
  }

  private void again(@Nullable List<Row> now) {
    Row was = chosen.get();
    if (was != null && (now == null || now.stream().noneMatch(row -> isSame(row, was)))) {
      choose(null);
    }
  }

  private static boolean isSame(Row one, Row other) {
    return one.odd().targetId().equals(other.odd().targetId())
        && one.odd().value() == other.odd().value();
  }

  private static Row row(OddReading odd, Words words) {
    SettingWords settings = new SettingWords(words);
    List<String> about = new ArrayList<>();
    for (String each : odd.about()) {
      about.add(words.has("act.class.grain." + each) ? grain(words, each) : each);
    }
    String what = odd.code().isEmpty() ? String.join(" · ", about) : PieceCode.spoken(odd.code());
    ValueMark mark = odd.mark();
    Message rule = OddFindings.rule(odd);
    return new Row(
        odd,
        what.isEmpty() ? settings.setting(List.of(), List.of()) : what,
        words.say("compare.value." + odd.value().key()),
        Show.fixed(odd.number(), 1),
        OddFindings.of(odd).stream().map(words::say).toList(),
        rule == null ? "" : words.say(rule),
        mark == null ? words.say("desk.class.odd.not-yet") : marked(mark, words));
  }

  private static String grain(Words words, String key) {
    return words.say("act.class.grain." + key);
  }

  private static String marked(ValueMark mark, Words words) {
    return switch (mark.mark()) {
      case KEPT -> words.say("desk.class.odd.kept");
      case MISTYPED -> words.say("desk.class.odd.mistyped");
      case SET_ASIDE -> words.say("desk.class.odd.aside", mark.reason());
    };
  }
}
