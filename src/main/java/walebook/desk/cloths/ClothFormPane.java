package walebook.desk.cloths;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.VBox;
import walebook.cloth.FabricKind;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.PickedField;
import walebook.desk.common.Session;
import walebook.desk.common.TypedField;
import walebook.words.Words;

/** The fields of a cloth's card. */
final class ClothFormPane extends VBox {
  private final Words words;
  private final ClothFormViewModel model;
  private final TypedField first;

  ClothFormPane(Words words, ClothFormViewModel model, Session session, String unit) {
    super(16);
    this.words = words;
    this.model = model;
    this.first = typed("cloth-name", words.say("desk.cloths.prompt.name"), "");
    FieldGroup what =
        new FieldGroup(words.say("desk.cloths.what"))
            .add(first, 20)
            .add(kind(session.tables().fabricKinds()), 17)
            .add(typed("fibre", words.say("desk.cloths.prompt.fibre"), ""), 22)
            .add(typed("elastane", "5", ""), 9);
    FieldGroup numbers =
        new FieldGroup(words.say("desk.cloths.numbers"))
            .add(typed("mass", "180", ""), 9)
            .add(typed("cloth-width", "", unit), 11)
            .add(typed("thickness", "", unit), 11);
    FieldGroup edge = new FieldGroup(words.say("desk.cloths.edge"));
    for (String each : ClothFormViewModel.EDGE) {
      edge.add(yesNo(each, List.of("", "yes", "no")), 13);
    }
    FieldGroup rest =
        new FieldGroup(words.say("desk.cloths.rest"))
            .add(typed("remark", "", ""), 30)
            .add(yesNo("retired", List.of("no", "yes")), 12);
    getChildren().setAll(what, numbers, edge, rest);
  }

  /** Where typing begins. */
  TypedField first() {
    return first;
  }

  private TypedField typed(String field, String prompt, String unit) {
    return new TypedField(
        words, words.say("desk.cloths.field." + field, unit), prompt, model.fields().field(field));
  }

  private PickedField kind(List<FabricKind> kinds) {
    List<String> keys = new ArrayList<>(List.of(""));
    kinds.forEach(each -> keys.add(each.key()));
    return new PickedField(
        words,
        words.say("desk.cloths.field.cloth-kind"),
        keys,
        key ->
            kinds.stream()
                .filter(each -> each.key().equals(key))
                .map(FabricKind::name)
                .findFirst()
                .orElse(key.isEmpty() ? words.say("desk.cloths.kind-unknown") : key),
        model.fields().field("cloth-kind"));
  }

  private PickedField yesNo(String field, List<String> answers) {
    return new PickedField(
        words,
        words.say("desk.cloths.field." + field),
        answers,
        key ->
            switch (key) {
              case "yes" -> words.say("desk.common.yes");
              case "no" -> words.say("desk.common.no");
              default -> words.say("desk.cloths.not-known");
            },
        model.fields().field(field));
  }
}
