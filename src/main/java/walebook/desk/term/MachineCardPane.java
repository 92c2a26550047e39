package walebook.desk.term;

import java.util.Arrays;
import java.util.List;
import javafx.beans.Observable;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.PickedField;
import walebook.desk.common.Texts;
import walebook.desk.common.TypedField;
import walebook.record.MachineKind;
import walebook.seam.StitchType;
import walebook.words.Words;

/** The card of one machine. */
final class MachineCardPane extends VBox {
  private final Words words;
  private final MachinesViewModel model;
  private final FlowPane stitches = new FlowPane(16, 4);

  MachineCardPane(Words words, MachinesViewModel model) {
    super(16);
    this.words = words;
    this.model = model;
    FieldGroup what =
        new FieldGroup(words.say("desk.term.machine.what"))
            .add(typed("machine-number"), 8)
            .add(typed("machine-name"), 18)
            .add(
                picked(
                    "machine-kind", Arrays.stream(MachineKind.values()).map(e -> e.key()).toList()),
                13)
            .add(onlyFor(typed("needle-to-knife")), 16);
    what.below(Texts.caption(words.say("desk.term.machine.stitches"))).below(stitches);
    FieldGroup dials =
        new FieldGroup(words.say("desk.term.machine.dials"))
            .add(typed("dial-lengths"), 22)
            .add(typed("dial-widths"), 22)
            .below(Texts.caption(words.say("desk.term.machine.dials-note")));
    FieldGroup pressure =
        new FieldGroup(
            words.say("desk.term.machine.pressure"),
            typed("pressure-lower"),
            typed("pressure-normal"),
            typed("pressure-higher"));
    FieldGroup tension =
        new FieldGroup(
            words.say("desk.term.machine.tension"),
            typed("tension-lower"),
            typed("tension-normal"),
            typed("tension-higher"));
    FieldGroup rest =
        new FieldGroup(words.say("desk.term.machine.rest"))
            .add(typed("feed-least"), 13)
            .add(typed("feed-most"), 13)
            .add(typed("remark"), 22)
            .add(picked("retired", List.of("", "yes", "no")), 12);
    model.offered().addListener((Observable change) -> offer());
    offer();
    getChildren().setAll(what, dials, pressure, tension, rest);
  }

  private void offer() {
    stitches.getChildren().clear();
    for (StitchType each : model.offered()) {
      CheckBox box = new CheckBox(each.name());
      box.setSelected(model.sews(each));
      box.selectedProperty().addListener((from, old, now) -> model.sews(each, now));
      stitches.getChildren().add(box);
    }
  }

  private TypedField onlyFor(TypedField knife) {
    var kind = model.fields().field("machine-kind").text();
    knife.visibleProperty().bind(kind.map(MachineKind.OVERLOCKER.key()::equals));
    knife.managedProperty().bind(knife.visibleProperty());
    return knife;
  }

  private TypedField typed(String field) {
    String prompt = "desk.term.prompt." + field;
    return new TypedField(
        words,
        words.say("desk.term.field." + field),
        words.has(prompt) ? words.say(prompt) : "",
        model.fields().field(field));
  }

  private PickedField picked(String field, List<String> keys) {
    return new PickedField(
        words,
        words.say("desk.term.field." + field),
        keys,
        key ->
            switch (key) {
              case "" -> "";
              case "yes" -> words.say("desk.common.yes");
              case "no" -> words.say("desk.common.no");
              default -> words.say("common.choice." + key);
            },
        model.fields().field(field));
  }
}
