package walebook.desk.decide;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javafx.beans.property.ObjectProperty;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.desk.common.AfterPause;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.Fold;
import walebook.desk.common.IntoView;
import walebook.desk.common.Session;
import walebook.desk.common.Texts;
import walebook.desk.common.TypedField;
import walebook.garment.GarmentKind;
import walebook.garment.Girth;
import walebook.garment.KindOpening;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** The form of a sheet: garment, pattern, girths, openings, sewing; girths follow the kind. */
final class SheetPane extends VBox {
  private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");

  private final Words words;
  private final SharedTables tables;
  private final SheetFields fields;
  private final SheetViewModel model;
  private final VBox byKind = new VBox(16);

  SheetPane(Session session, SheetViewModel model, List<Cloth> cloths, Unit lengths) {
    super(16);
    this.words = session.words();
    this.tables = session.tables();
    this.model = model;
    this.fields = new SheetFields(words, tables, model.fields(), lengths);
    AfterPause.of(model.editsProperty(), model::keepDraft);
    getChildren().setAll(garment(cloths), pattern(), byKind, sewing());
    // The kind's own listener goes with the pane: the model outlives it.
    ChangeListener<String> follow = (from, old, now) -> kind(now);
    ObjectProperty<String> kind = model.fields().field("garment-kind").text();
    kind.addListener(new WeakChangeListener<>(follow));
    setUserData(follow);
    kind(kind.get());
    ChangeListener<Number> refused = (from, old, now) -> toFirstRefused();
    model.refusalsProperty().addListener(new WeakChangeListener<>(refused));
    getProperties().put(SheetPane.class, refused);
  }

  private void toFirstRefused() {
    lookupAll(".field").stream()
        .filter(each -> each.getPseudoClassStates().contains(REFUSED))
        .findFirst()
        .ifPresent(
            field -> {
              for (Node up = field; up != null; up = up.getParent()) {
                if (up instanceof Fold fold) {
                  fold.openProperty().set(true);
                }
              }
              ((Parent) field)
                  .getChildrenUnmodifiable().stream()
                      .filter(Node::isFocusTraversable)
                      .findFirst()
                      .ifPresent(IntoView::focus);
            });
  }

  private FieldGroup garment(List<Cloth> cloths) {
    TypedField name = fields.plain("sheet-name");
    if (model.saved() == null) {
      IntoView.onceShown(name.field());
    }
    return new FieldGroup(words.say("desk.decide.sheet.garment"))
        .add(name, 18)
        .add(
            fields.picked(
                "garment-kind",
                tables.garment().kinds().stream().map(GarmentKind::key).toList(),
                key ->
                    SheetFields.rowName(
                        tables.garment().kinds(), key, GarmentKind::key, GarmentKind::name)),
            15)
        .add(fields.cloth("cloth", cloths), 20)
        .add(fields.grain("grain-round"), 18);
  }

  private FieldGroup pattern() {
    return new FieldGroup(words.say("desk.decide.sheet.pattern"))
        .add(fields.length("gauge-from"), 14)
        .add(fields.length("gauge-to"), 12)
        .add(fields.plain("seams"), 12)
        .add(fields.picked("wear", List.of("", "day", "sport"), this::wear), 15);
  }

  private FieldGroup sewing() {
    return new FieldGroup(words.say("desk.decide.sheet.sewing"))
        .add(fields.machine("machine-kind"), 14)
        .add(fields.stitch("stitch"), 20)
        .add(fields.plain("dial-width"), 9)
        .add(fields.plain("dial-length"), 9)
        .add(fields.mm("allowance"), 12)
        .add(fields.mm("sewn"), 12)
        .add(fields.yesNo("trimmed"), 14)
        .add(fields.yesNo("sleeve"), 14)
        .add(fields.plain("remark"), 30);
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
      group.add(fields.named("finished-" + girth.key(), girth.sayKey()), 12);
    }
    group.below(new Fold(words.say("desk.decide.sheet.seams"), seams(kind)));
    return group;
  }

  /** Where more or fewer seams cross than elsewhere: one at a sleeve, two at the body. */
  private FlowPane seams(GarmentKind kind) {
    FlowPane all = new FlowPane(16, 8);
    for (Girth girth : kind.girths()) {
      all.getChildren().add(fields.number(girth.key() + "-seams", girth.sayKey(), ""));
    }
    for (KindOpening opening : kind.openings()) {
      all.getChildren()
          .add(fields.number(opening.edge().key() + "-seams", opening.edge().sayKey(), ""));
    }
    return all;
  }

  private FieldGroup openings(GarmentKind kind) {
    FieldGroup group = new FieldGroup(words.say("desk.decide.sheet.openings"));
    for (KindOpening opening : kind.openings()) {
      group.add(new OpeningPane(words, tables, fields, opening), 21);
    }
    return group;
  }

  private FieldGroup body(GarmentKind kind) {
    Set<Girth> girths = new LinkedHashSet<>(kind.girths());
    kind.openings().forEach(each -> girths.add(each.over()));
    FieldGroup group = new FieldGroup(words.say("desk.decide.sheet.body"));
    if (model.isBodyHidden()) {
      Label others = Texts.text("");
      others.textProperty().bind(model.othersBodyProperty());
      return group.below(others);
    }
    for (Girth girth : girths) {
      group.add(fields.named("body-" + girth.key(), girth.sayKey()), 12);
    }
    group.add(fields.picked("keep-body", List.of("no", "yes"), this::keeps), 24);
    group.below(Texts.caption(words.say("desk.decide.sheet.private")));
    return group;
  }

  private String keeps(String key) {
    return words.say(
        key.equals("yes") ? "desk.decide.sheet.keep-body" : "desk.decide.sheet.keep-nothing");
  }

  private String wear(String key) {
    return switch (key) {
      case "day" -> words.say("desk.decide.choice.wear.day");
      case "sport" -> words.say("desk.decide.choice.wear.sport");
      default -> words.say("desk.decide.sheet.usual-wear");
    };
  }
}
