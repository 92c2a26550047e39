package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.PickedField;
import walebook.desk.common.Texts;
import walebook.lesson.PackDraft;
import walebook.lesson.PiecesPlan;
import walebook.lesson.ReadingsPlan;
import walebook.lesson.SettingKey;
import walebook.lesson.Success;
import walebook.record.Grain;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.NeedlePoint;
import walebook.record.Tier;
import walebook.words.Words;

/** The plan of a pack that is written: what is asked, cloths, settings, tiers, when it is done. */
final class WritePlan {
  private static final List<SettingKey> FACTORS =
      Arrays.stream(SettingKey.values())
          .filter(each -> each != SettingKey.METHOD && each != SettingKey.NEED_PERCENT)
          .toList();

  private final Words words;
  private final WritePackViewModel model;
  private final WriteFields fields;

  WritePlan(Words words, WritePackViewModel model, WriteFields fields) {
    this.words = words;
    this.model = model;
    this.fields = fields;
  }

  Node shown() {
    FieldGroup asks = new FieldGroup(words.say("desk.lessons.write.plan"));
    PickedField kind =
        new PickedField(
            words,
            words.say("desk.lessons.write.kind"),
            List.of(PiecesPlan.KIND, ReadingsPlan.KIND),
            key ->
                key.equals(PiecesPlan.KIND)
                    ? words.say("desk.lessons.write.kind-pieces")
                    : words.say("desk.lessons.write.kind-readings"),
            model.field("plan.kind"));
    fields.keep("plan.kind", kind, words.say("desk.lessons.write.kind"));
    asks.add(kind, 16).add(fields.typed("plan.question", "desk.lessons.write.question"), 34);
    Node cloths =
        fields.grid(
            "desk.lessons.write.cloths",
            List.of(fields.column(".slot", "desk.lessons.write.slot", 5), fields.says(34)),
            i -> "plan.cloths[" + i + "]",
            PackForm.CLOTHS);
    Node pieces = new VBox(16, factors(), settings());
    FieldGroup readings = new FieldGroup(words.say("desk.lessons.write.readings"));
    for (int i = 0; i < PackForm.GRAINS; i++) {
      String path = "plan.grains[" + i + "]";
      String name = words.say("desk.lessons.write.grain", i + 1);
      readings.add(fields.picked(path, name, name, WriteFields.keys(Grain.class)), 21);
    }
    readings.add(fields.typed("plan.repeats", "desk.lessons.write.repeats"), 8);
    String firstGrain = words.say("desk.lessons.write.first-grain");
    PickedField first =
        fields.picked(PackDraft.FIRST_GRAIN, firstGrain, firstGrain, WriteFields.keys(Grain.class));
    readings
        .add(fields.typed(PackDraft.FIRST_CLOTH, "desk.lessons.write.first-cloth"), 16)
        .add(first, 21);
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
        new RowsGrid.Column(
            ".key", words.say("desk.lessons.write.factor"), 11, keys, fields::setting));
    for (int i = 0; i < PackForm.LEVELS; i++) {
      columns.add(
          RowsGrid.Column.typed(
              ".levels[" + i + "]", words.say("desk.lessons.write.level", i + 1), 6));
    }
    columns.add(fields.says(14));
    VBox grid =
        fields.grid(
            "desk.lessons.write.factors",
            columns,
            i -> "plan.factors[" + i + "]",
            PackForm.FACTORS);
    grid.getChildren().add(1, Texts.caption(words.say("desk.lessons.write.factors-say")));
    return grid;
  }

  /** A setting a row: what it is on every piece, and where the control piece differs. */
  private Node settings() {
    String onAll = words.say("desk.lessons.write.fixed");
    String onControl = words.say("desk.lessons.write.control");
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
          case GRAIN -> WriteFields.keys(Grain.class);
          case METHOD -> WriteFields.keys(Method.class);
          case MACHINE -> WriteFields.keys(MachineKind.class);
          case NEEDLE_POINT -> WriteFields.keys(NeedlePoint.class);
          default -> List.of();
        };
    String path = at + key.key();
    String label = fields.setting(key.key());
    String name = title + ", " + label;
    if (keys.isEmpty()) {
      group.add(fields.typed(path, label, name), 10);
    } else {
      group.add(fields.picked(path, label, name, keys), 14);
    }
  }

  private Node tiers() {
    FieldGroup group = new FieldGroup(words.say("desk.lessons.write.tiers"));
    for (Tier tier : Tier.values()) {
      String at = "plan.tiers." + tier.key();
      String cellsName = words.say("desk.lessons.write.cells", fields.choice(tier.key()));
      String saysName = words.say("desk.lessons.write.tier-says", fields.choice(tier.key()));
      group
          .add(fields.typed(at + ".cells", cellsName, cellsName), 12)
          .add(fields.typed(at + ".says", saysName, saysName), 34);
    }
    return group;
  }

  private Node success() {
    List<String> keys = new ArrayList<>(List.of(""));
    Arrays.stream(Success.Kind.values()).forEach(each -> keys.add(each.key()));
    return fields.grid(
        "desk.lessons.write.success",
        List.of(
            new RowsGrid.Column(
                ".check", words.say("desk.lessons.write.check"), 16, keys, fields::check),
            fields.column(".value", "desk.lessons.write.value", 6),
            fields.says(30)),
        i -> "success[" + i + "]",
        PackForm.CHECKS);
  }
}
