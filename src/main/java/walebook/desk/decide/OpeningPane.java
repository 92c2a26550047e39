package walebook.desk.decide;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import walebook.act.decide.KeepGarment;
import walebook.desk.common.Texts;
import walebook.garment.KindOpening;
import walebook.garment.LinkKind;
import walebook.garment.NeckShape;
import walebook.garment.OpeningEdge;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** One opening: its measure, what goes round it, and of each of these only what it asks for. */
final class OpeningPane extends VBox {
  private final Words words;
  private final SheetFields fields;
  private final OpeningEdge edge;

  OpeningPane(Words words, SharedTables tables, SheetFields fields, KindOpening opening) {
    super(8);
    this.words = words;
    this.fields = fields;
    this.edge = opening.edge();
    String key = edge.key();
    FlowPane measures = row();
    measures.getChildren().add(wide(fields.named("opening-" + key, edge.sayKey()), 12));
    getChildren().add(measures);
    if (edge == OpeningEdge.NECKLINE) {
      getChildren()
          .add(
              fields.picked(
                  "shape",
                  tables.garment().neckShapes().stream().map(NeckShape::key).toList(),
                  shape ->
                      SheetFields.rowName(
                          tables.garment().neckShapes(), shape, NeckShape::key, NeckShape::name)));
    }
    FlowPane round = new FlowPane(12, 4);
    getChildren().addAll(Texts.caption(words.say("desk.decide.sheet.round")), round);
    for (LinkKind link : KeepGarment.links()) {
      round.getChildren().add(box(link));
      getChildren().add(details(link));
    }
  }

  private CheckBox box(LinkKind link) {
    CheckBox box = new CheckBox(words.say(link.sayKey()));
    var text = fields.form().field(edge.key() + "-" + link.key()).text();
    box.setSelected("yes".equals(text.get()));
    box.setAccessibleText(words.say(edge.sayKey()) + ": " + words.say(link.sayKey()));
    box.selectedProperty().addListener((from, was, now) -> text.set(now ? "yes" : ""));
    text.addListener((from, old, now) -> box.setSelected("yes".equals(now)));
    return box;
  }

  /** Shown once the link goes round; its machine and dials once it has a stitch of its own. */
  private Node details(LinkKind link) {
    String field = edge.key() + "-" + link.key();
    FlowPane row = row();
    if (link == LinkKind.BAND) {
      row.getChildren()
          .addAll(
              wide(fields.number(edge.key() + "-ratio", "desk.decide.field.ratio", ""), 9),
              wide(
                  fields.named(edge.key() + "-finished-width", "desk.decide.field.finished-width"),
                  10));
    }
    if (link != LinkKind.ELASTIC) {
      Region machine = wide(fields.machine(field + "-machine"), 10);
      Region width = wide(fields.number(field + "-width", "desk.decide.field.dial-width", ""), 8);
      Region length =
          wide(fields.number(field + "-length", "desk.decide.field.dial-length", ""), 8);
      ObservableValue<Boolean> own =
          fields.form().field(field + "-stitch").text().map(key -> !key.isEmpty());
      for (Region each : new Region[] {machine, width, length}) {
        shownWhile(each, own);
      }
      row.getChildren()
          .addAll(wide(fields.ownStitch(field + "-stitch"), 19), machine, width, length);
    }
    var stated = fields.form().field(field + "-stated").text();
    if (isFromPacket(link) || !stated.get().isEmpty()) {
      row.getChildren()
          .add(wide(fields.number(field + "-stated", "desk.decide.field.stated", "%"), 14));
    }
    VBox all = new VBox(2, Texts.text(words.say(link.sayKey()), "strong"), row);
    all.getStyleClass().add("link-details");
    shownWhile(all, fields.form().field(field).text().map("yes"::equals));
    return all;
  }

  private static boolean isFromPacket(LinkKind link) {
    return link == LinkKind.INTERFACING || link == LinkKind.BAND || link == LinkKind.ELASTIC;
  }

  private static void shownWhile(Region region, ObservableValue<Boolean> when) {
    region.visibleProperty().bind(when.orElse(false));
    region.managedProperty().bind(region.visibleProperty());
  }

  private static FlowPane row() {
    FlowPane row = new FlowPane(8, 8);
    row.setPrefWrapLength(200);
    return row;
  }

  private static Region wide(Region field, double ems) {
    field.setStyle("-fx-pref-width: " + ems + "em;");
    return field;
  }
}
