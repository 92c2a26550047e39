package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.LinesField;
import walebook.desk.common.PickedField;
import walebook.desk.common.Texts;
import walebook.desk.common.TypedField;
import walebook.lesson.PackDraft;
import walebook.lesson.PiecesPlan;
import walebook.lesson.ReadingsPlan;
import walebook.lesson.SettingKey;
import walebook.lesson.Success;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.NeedlePoint;
import walebook.record.Tier;
import walebook.words.Words;

/** The parts of the form in which a pack is written. */
final class WriteParts {
  private static final List<SettingKey> FACTORS =
      Arrays.stream(SettingKey.values())
          .filter(each -> each != SettingKey.METHOD && each != SettingKey.NEED_PERCENT)
          .toList();

  private final Words words;
  private final WritePackViewModel model;
  private final FieldControls controls = new FieldControls();
  private final VBox preview = new VBox(12);

  WriteParts(Words words, WritePackViewModel model) {
    this.words = words;
    this.model = model;
    model.checkedProperty().addListener((from, old, now) -> preview(now));
    preview(model.checkedProperty().get());
  }

  FieldControls controls() {
    return controls;
  }

  Node text() {
    LinesField lesson =
        new LinesField(
            words, say("desk.lessons.write.lesson"), "", 26, model.field(PackDraft.LESSON));
    keep(PackDraft.LESSON, lesson, "lesson.md");
    VBox.setVgrow(lesson, Priority.ALWAYS);
    ScrollPane shown = new ScrollPane(preview);
    shown.setFitToWidth(true);
    shown.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    preview.getStyleClass().add("card");
    SplitPane beside = new SplitPane(lesson, shown);
    beside.setStyle("-fx-min-height: 36em;");
    VBox.setVgrow(beside, Priority.ALWAYS);
    FieldGroup minutes = new FieldGroup(say("desk.lessons.write.minutes"));
    model.headings().addListener((ListChangeListener<String>) change -> minutes(minutes));
    minutes(minutes);
    return new VBox(16, beside, minutes);
  }

  private void minutes(FieldGroup group) {
    List<Node> fields = new ArrayList<>();
    for (int i = 0; i < model.headings().size(); i++) {
      String path = PackForm.minutes(i);
      TypedField field = new TypedField(words, model.headings().get(i), "", model.field(path));
      controls.put(
          path, field.field(), words.say("desk.lessons.write.minutes-of", model.headings().get(i)));
      fields.add(field);
    }
    group.getChildren().remove(1, group.getChildren().size());
    FieldGroup row = new FieldGroup("");
    row.getStyleClass().clear();
    row.getChildren().remove(0);
    fields.forEach(each -> row.add(each, 13));
    group.below(row);
  }

  private void preview(PackDraft.@Nullable Checked checked) {
    if (checked == null) {
      return;
    }
    List<Node> parts = new ArrayList<>();
    if (!checked.text().title().isEmpty()) {
      parts.add(Texts.text(checked.text().title(), "place-title"));
    }
    parts.add(new BlocksPane(checked.files(), checked.text().opening()));
    checked
        .text()
        .steps()
        .forEach(
            step -> {
              parts.add(Texts.section(step.heading()));
              parts.add(new BlocksPane(checked.files(), step.blocks()));
            });
    preview.getChildren().setAll(parts);
  }

  Node plan() {
    FieldGroup asks = new FieldGroup(say("desk.lessons.write.plan"));
    PickedField kind =
        new PickedField(
            words,
            say("desk.lessons.write.kind"),
            List.of(PiecesPlan.KIND, ReadingsPlan.KIND),
            key ->
                key.equals(PiecesPlan.KIND)
                    ? say("desk.lessons.write.kind-pieces")
                    : say("desk.lessons.write.kind-readings"),
            model.field("plan.kind"));
    keep("plan.kind", kind, say("desk.lessons.write.kind"));
    asks.add(kind, 16).add(typed("plan.question", "desk.lessons.write.question"), 34);
    Node cloths =
        grid(
            "desk.lessons.write.cloths",
            List.of(column(".slot", "desk.lessons.write.slot", 5), says(34)),
            i -> "plan.cloths[" + i + "]",
            PackForm.CLOTHS);
    Node pieces = new VBox(16, factors(), settings());
    FieldGroup readings = new FieldGroup(say("desk.lessons.write.readings"));
    for (int i = 0; i < PackForm.GRAINS; i++) {
      String path = "plan.grains[" + i + "]";
      String name = words.say("desk.lessons.write.grain", i + 1);
      PickedField grain =
          new PickedField(
              words,
              name,
              keys(Grain.class),
              key -> key.isEmpty() ? "" : choice(key),
              model.field(path));
      keep(path, grain, name);
      readings.add(grain, 16);
    }
    readings.add(typed("plan.repeats", "desk.lessons.write.repeats"), 8);
    String firstGrain = say("desk.lessons.write.first-grain");
    PickedField first =
        new PickedField(
            words,
            firstGrain,
            keys(Grain.class),
            key -> key.isEmpty() ? "" : choice(key),
            model.field(PackDraft.FIRST_GRAIN));
    keep(PackDraft.FIRST_GRAIN, first, firstGrain);
    readings.add(typed(PackDraft.FIRST_CLOTH, "desk.lessons.write.first-cloth"), 16).add(first, 16);
    onlyWhen(pieces, false);
    onlyWhen(readings, true);
    return new VBox(16, asks, cloths, pieces, readings, tiers(), success());
  }

  private void onlyWhen(Node node, boolean readings) {
    node.visibleProperty()
        .bind(
            model
                .field("plan.kind")
                .text()
                .map(kind -> kind.equals(ReadingsPlan.KIND) == readings));
    node.managedProperty().bind(node.visibleProperty());
  }

  private Node factors() {
    List<RowsGrid.Column> columns = new ArrayList<>();
    List<String> keys = new ArrayList<>(List.of(""));
    FACTORS.forEach(each -> keys.add(each.key()));
    columns.add(
        new RowsGrid.Column(".key", say("desk.lessons.write.factor"), 11, keys, this::setting));
    for (int i = 0; i < PackForm.LEVELS; i++) {
      columns.add(
          RowsGrid.Column.typed(
              ".levels[" + i + "]", words.say("desk.lessons.write.level", i + 1), 6));
    }
    columns.add(says(14));
    VBox grid =
        grid(
            "desk.lessons.write.factors",
            columns,
            i -> "plan.factors[" + i + "]",
            PackForm.FACTORS);
    grid.getChildren().add(1, Texts.caption(say("desk.lessons.write.factors-say")));
    return grid;
  }

  /** A setting a row: what it is on every piece, and where the control piece differs. */
  private Node settings() {
    String onAll = say("desk.lessons.write.fixed");
    String onControl = say("desk.lessons.write.control");
    FieldGroup fixed = new FieldGroup(onAll);
    FieldGroup control = new FieldGroup(onControl);
    for (SettingKey key : SettingKey.values()) {
      setting(fixed, onAll, "plan.fixed.", key);
      setting(control, onControl, "plan.control.", key);
    }
    return new VBox(16, fixed, control);
  }

  private void setting(FieldGroup group, String title, String at, SettingKey key) {
    List<String> keys =
        switch (key) {
          case GRAIN -> keys(Grain.class);
          case METHOD -> keys(Method.class);
          case MACHINE -> keys(MachineKind.class);
          case NEEDLE_POINT -> keys(NeedlePoint.class);
          default -> List.of();
        };
    String path = at + key.key();
    String label = setting(key.key());
    if (keys.isEmpty()) {
      TypedField field = new TypedField(words, label, "", model.field(path));
      controls.put(path, field.field(), title + ", " + label);
      group.add(field, 10);
    } else {
      PickedField field =
          new PickedField(words, label, keys, k -> k.isEmpty() ? "" : choice(k), model.field(path));
      keep(path, field, title + ", " + label);
      group.add(field, 14);
    }
  }

  private Node tiers() {
    FieldGroup group = new FieldGroup(say("desk.lessons.write.tiers"));
    for (Tier tier : Tier.values()) {
      String at = "plan.tiers." + tier.key();
      String cellsName = words.say("desk.lessons.write.cells", choice(tier.key()));
      String saysName = words.say("desk.lessons.write.tier-says", choice(tier.key()));
      TypedField cells = new TypedField(words, cellsName, "", model.field(at + ".cells"));
      TypedField says = new TypedField(words, saysName, "", model.field(at + ".says"));
      controls.put(at + ".cells", cells.field(), cellsName);
      controls.put(at + ".says", says.field(), saysName);
      group.add(cells, 12).add(says, 34);
    }
    return group;
  }

  private Node success() {
    List<String> keys = new ArrayList<>(List.of(""));
    Arrays.stream(Success.Kind.values()).forEach(each -> keys.add(each.key()));
    return grid(
        "desk.lessons.write.success",
        List.of(
            new RowsGrid.Column(".check", say("desk.lessons.write.check"), 16, keys, this::check),
            column(".value", "desk.lessons.write.value", 6),
            says(30)),
        i -> "success[" + i + "]",
        PackForm.CHECKS);
  }

  Node needs() {
    Node materials =
        grid(
            "desk.lessons.write.materials",
            List.of(
                column(".what", "desk.lessons.write.what", 22),
                column(".count", "desk.lessons.write.count", 5),
                column(".cloth", "desk.lessons.write.slot", 5),
                column(".along_mm", "desk.lessons.write.along", 6),
                column(".across_mm", "desk.lessons.write.across", 6),
                new RowsGrid.Column(
                    ".grain",
                    say("desk.lessons.write.long-side"),
                    13,
                    keys(Grain.class),
                    this::choice),
                column(".thread_m", "desk.lessons.write.thread", 6)),
            i -> "materials[" + i + "]",
            PackForm.MATERIALS);
    Node cautions =
        grid(
            "desk.lessons.write.cautions",
            List.of(column(".key", "desk.lessons.write.caution-key", 11), says(44)),
            i -> "cautions[" + i + "]",
            PackForm.CAUTIONS);
    return new VBox(16, materials, cautions);
  }

  Node about() {
    FieldGroup about = new FieldGroup(say("desk.lessons.write.about"));
    about
        .add(typed("title", "desk.lessons.write.title-of"), 24)
        .add(typed("name", "desk.lessons.write.name"), 18)
        .add(typed("version", "desk.lessons.write.version"), 7);
    LinesField summary =
        new LinesField(words, say("desk.lessons.write.summary"), "", 3, model.field("summary"));
    keep("summary", summary, say("desk.lessons.write.summary"));
    summary.setMinHeight(Region.USE_PREF_SIZE);
    about.below(summary);
    LinesField rest =
        new LinesField(words, say("desk.lessons.write.rest"), "", 24, model.field(PackDraft.REST));
    rest.getStyleClass().add("typed-text");
    rest.setMinHeight(Region.USE_PREF_SIZE);
    keep(PackDraft.REST, rest, say("desk.lessons.write.rest-title"));
    VBox card =
        new VBox(
            8,
            Texts.section(say("desk.lessons.write.rest-title")),
            Texts.caption(say("desk.lessons.write.rest-says")),
            rest);
    card.getStyleClass().add("card");
    return new VBox(16, about, card);
  }

  private TypedField typed(String path, String label) {
    TypedField field = new TypedField(words, say(label), "", model.field(path));
    controls.put(path, field.field(), say(label));
    return field;
  }

  private void keep(String path, Region field, String name) {
    controls.put(path, field.getChildrenUnmodifiable().get(1), name);
  }

  private RowsGrid grid(
      String title, List<RowsGrid.Column> columns, Function<Integer, String> row, int most) {
    return new RowsGrid(words, say(title), model, controls, columns, row, most);
  }

  private RowsGrid.Column column(String path, String title, double ems) {
    return RowsGrid.Column.typed(path, say(title), ems);
  }

  private RowsGrid.Column says(double ems) {
    return column(".says", "desk.lessons.write.says", ems);
  }

  private static <T extends Enum<T> & Keyed> List<String> keys(Class<T> kind) {
    List<String> keys = new ArrayList<>(List.of(""));
    for (T each : kind.getEnumConstants()) {
      keys.add(each.key());
    }
    return keys;
  }

  private String choice(String key) {
    String says = "common.choice." + key;
    return words.has(says) ? words.say(says) : key;
  }

  private String setting(String key) {
    String says = "desk.lessons.setting." + key;
    return words.has(says) ? words.say(says) : key;
  }

  private String check(String key) {
    String says = "desk.lessons.check." + key;
    return words.has(says) ? words.say(says) : key;
  }

  private String say(String key) {
    return words.say(key);
  }
}
