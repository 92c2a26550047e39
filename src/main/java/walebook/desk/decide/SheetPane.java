package walebook.desk.decide;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.act.decide.KeepGarment;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.PickedField;
import walebook.desk.common.Session;
import walebook.desk.common.Texts;
import walebook.desk.common.TypedField;
import walebook.garment.GarmentKind;
import walebook.garment.Girth;
import walebook.garment.KindOpening;
import walebook.garment.LinkKind;
import walebook.garment.NeckShape;
import walebook.garment.OpeningEdge;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.MachineKind;
import walebook.seam.StitchType;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** The form of a sheet: garment, pattern, girths, openings, sewing; girths follow the kind. */
final class SheetPane extends VBox {
  private final Words words;
  private final SharedTables tables;
  private final SheetViewModel model;
  private final String unit;
  private final VBox byKind = new VBox(16);

  SheetPane(Session session, SheetViewModel model, List<Cloth> cloths, Unit lengths) {
    super(16);
    this.words = session.words();
    this.tables = session.tables();
    this.model = model;
    this.unit = lengths.sign();
    getChildren().setAll(garment(cloths), pattern(), byKind, sewing());
    model.fields().field("garment-kind").text().addListener((from, old, now) -> kind(now));
    kind(model.fields().text("garment-kind"));
  }

  private FieldGroup garment(List<Cloth> cloths) {
    List<String> keys = new ArrayList<>(List.of(""));
    cloths.forEach(each -> keys.add(each.id().toString()));
    return new FieldGroup(words.say("desk.decide.sheet.garment"))
        .add(typed("sheet-name", ""), 18)
        .add(
            picked(
                "garment-kind",
                tables.garment().kinds().stream().map(GarmentKind::key).toList(),
                key -> rowName(tables.garment().kinds(), key, GarmentKind::key, GarmentKind::name)),
            15)
        .add(
            picked(
                "cloth",
                keys,
                key ->
                    key.isEmpty()
                        ? words.say("desk.decide.sheet.no-cloth")
                        : rowName(cloths, key, each -> each.id().toString(), Cloth::name)),
            20)
        .add(picked("grain-round", List.of("course", "wale"), key -> choice(key)), 18);
  }

  private FieldGroup pattern() {
    return new FieldGroup(words.say("desk.decide.sheet.pattern"))
        .add(typed("gauge-from", unit), 12)
        .add(typed("gauge-to", unit), 12)
        .add(typed("seams", ""), 12);
  }

  private FieldGroup sewing() {
    List<String> stitches = tables.stitchTypes().stream().map(StitchType::key).toList();
    List<String> machines = List.of(MachineKind.values()).stream().map(MachineKind::key).toList();
    List<String> yesNo = List.of("no", "yes");
    return new FieldGroup(words.say("desk.decide.sheet.sewing"))
        .add(picked("machine-kind", machines, key -> choice(key)), 14)
        .add(
            picked(
                "stitch",
                stitches,
                key -> rowName(tables.stitchTypes(), key, StitchType::key, StitchType::name)),
            20)
        .add(typed("dial-width", ""), 9)
        .add(typed("dial-length", ""), 9)
        .add(typed("allowance", Unit.MM.sign()), 12)
        .add(typed("sewn", Unit.MM.sign()), 12)
        .add(picked("trimmed", yesNo, this::yes), 14)
        .add(picked("sleeve", yesNo, this::yes), 14);
  }

  private void kind(String key) {
    byKind.getChildren().clear();
    tables.garment().kinds().stream()
        .filter(each -> each.key().equals(key))
        .findFirst()
        .ifPresent(kind -> byKind.getChildren().setAll(girths(kind), openings(kind), body(kind)));
  }

  private FieldGroup girths(GarmentKind kind) {
    FieldGroup group = new FieldGroup(words.say("desk.decide.sheet.girths"));
    for (Girth girth : kind.girths()) {
      group.add(named("finished-", girth.key(), girth.sayKey()), 12);
    }
    return group;
  }

  private FieldGroup openings(GarmentKind kind) {
    FieldGroup group = new FieldGroup(words.say("desk.decide.sheet.openings"));
    for (KindOpening opening : kind.openings()) {
      OpeningEdge edge = opening.edge();
      VBox one = new VBox(8, named("opening-", edge.key(), edge.sayKey()));
      if (edge == OpeningEdge.NECKLINE) {
        one.getChildren()
            .add(
                picked(
                    "shape",
                    tables.garment().neckShapes().stream().map(NeckShape::key).toList(),
                    key ->
                        rowName(
                            tables.garment().neckShapes(), key, NeckShape::key, NeckShape::name)));
      }
      FlowPane round = new FlowPane(12, 4);
      KeepGarment.links().forEach(link -> round.getChildren().add(link(edge, link)));
      one.getChildren().addAll(Texts.caption(words.say("desk.decide.sheet.round")), round);
      group.add(one, 21);
    }
    return group;
  }

  private CheckBox link(OpeningEdge edge, LinkKind link) {
    CheckBox box = new CheckBox(words.say(link.sayKey()));
    var text = model.fields().field(edge.key() + "-" + link.key()).text();
    box.setSelected("yes".equals(text.get()));
    box.setAccessibleText(words.say(edge.sayKey()) + ": " + words.say(link.sayKey()));
    box.selectedProperty().addListener((from, was, now) -> text.set(now ? "yes" : ""));
    text.addListener((from, old, now) -> box.setSelected("yes".equals(now)));
    return box;
  }

  private FieldGroup body(GarmentKind kind) {
    Set<Girth> girths = new LinkedHashSet<>(kind.girths());
    kind.openings().forEach(each -> girths.add(each.over()));
    FieldGroup group = new FieldGroup(words.say("desk.decide.sheet.body"));
    for (Girth girth : girths) {
      group.add(named("body-", girth.key(), girth.sayKey()), 12);
    }
    group.add(picked("keep-body", List.of("no", "yes"), this::keeps), 24);
    group.below(Texts.caption(words.say("desk.decide.sheet.private")));
    return group;
  }

  private String yes(String key) {
    return words.say(key.equals("yes") ? "desk.common.yes" : "desk.common.no");
  }

  private String keeps(String key) {
    return words.say(
        key.equals("yes") ? "desk.decide.sheet.keep-body" : "desk.decide.sheet.keep-nothing");
  }

  private String choice(String key) {
    return key.isEmpty() ? "" : words.say("common.choice." + key);
  }

  private TypedField typed(String field, String sign) {
    String says = words.say("desk.decide.field." + field);
    String label = sign.isEmpty() ? says : words.say("desk.decide.with-unit", says, sign);
    return new TypedField(words, label, "", model.fields().field(field));
  }

  private TypedField named(String family, String key, String sayKey) {
    String label = words.say("desk.decide.with-unit", words.say(sayKey), unit);
    return new TypedField(words, label, "", model.fields().field(family + key));
  }

  private PickedField picked(String field, List<String> keys, Function<String, String> name) {
    return new PickedField(
        words, words.say("desk.decide.field." + field), keys, name, model.fields().field(field));
  }

  private static <T> String rowName(
      List<T> rows, String key, Function<T, String> keyOf, Function<T, String> nameOf) {
    return rows.stream()
        .filter(each -> keyOf.apply(each).equals(key))
        .map(nameOf)
        .findFirst()
        .orElse(key);
  }
}
