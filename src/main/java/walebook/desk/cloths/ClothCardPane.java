package walebook.desk.cloths;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.act.cloth.ClothCard;
import walebook.act.cloth.GrainSummary;
import walebook.cloth.RecoveryBand;
import walebook.cloth.Repeats;
import walebook.desk.common.Texts;
import walebook.desk.common.WorkingPane;
import walebook.quantity.Show;
import walebook.record.Cloth;
import walebook.record.Edge;
import walebook.record.PieceCode;
import walebook.record.TestPiece;
import walebook.words.Words;

/** A cloth's card: what it is, how it stretches both ways, its readings, what was sewn on it. */
final class ClothCardPane extends VBox {
  private final Words words;
  private final ClothCard card;
  private final ClothsViewModel model;

  ClothCardPane(Words words, ClothCard card, ClothsViewModel model) {
    super(16);
    this.words = words;
    this.card = card;
    this.model = model;
    FlowPane top = new FlowPane(16, 16, what());
    for (GrainSummary grain : card.grains()) {
      top.getChildren().add(grain(grain));
    }
    getChildren().add(top);
    if (card.readings().isEmpty()) {
      getChildren().add(card(Texts.text(words.say("desk.cloths.no-readings"))));
    } else {
      if (card.balance() != null) {
        WorkingPane balance = new WorkingPane(words);
        balance.show(card.balance());
        getChildren().add(card(balance));
      }
      getChildren()
          .addAll(
              Texts.section(words.say("desk.cloths.readings")),
              new ReadingTable(words, card, model));
    }
    getChildren().addAll(new WashesPane(words, card, model), sewn());
  }

  private Node what() {
    Cloth cloth = card.cloth();
    VBox lines = card(Texts.section(words.say("desk.cloths.what")));
    line(lines, "desk.cloths.line.kind", kind());
    line(lines, "desk.cloths.line.fibre", cloth.fibre());
    line(lines, "desk.cloths.line.elastane", number(cloth.elastanePercent()));
    line(lines, "desk.cloths.line.mass", number(cloth.massGm2()));
    line(lines, "desk.cloths.line.width", length(cloth.widthMm()));
    line(lines, "desk.cloths.line.thickness", length(cloth.thicknessMm()));
    lines.getChildren().add(Texts.text(words.say("desk.cloths.line.edge", edge())));
    line(lines, "desk.cloths.line.remark", cloth.remark());
    return lines;
  }

  private String kind() {
    String key = card.cloth().kind();
    return model.session().tables().fabricKinds().stream()
        .filter(each -> each.key().equals(key))
        .map(each -> each.name())
        .findFirst()
        .orElse(key);
  }

  private String edge() {
    List<String> known = new ArrayList<>();
    Edge edge = card.cloth().edge();
    edge(known, edge.frays(), "desk.cloths.edge.frays", "desk.cloths.edge.frays-not");
    edge(known, edge.sheds(), "desk.cloths.edge.sheds", "desk.cloths.edge.sheds-not");
    edge(known, edge.ladders(), "desk.cloths.edge.ladders", "desk.cloths.edge.ladders-not");
    edge(known, edge.curls(), "desk.cloths.edge.curls", "desk.cloths.edge.curls-not");
    edge(
        known,
        edge.needsFinishing(),
        "desk.cloths.edge.needs-finishing",
        "desk.cloths.edge.needs-finishing-not");
    return known.isEmpty() ? words.say("desk.cloths.edge.unknown") : String.join(", ", known);
  }

  private void edge(List<String> known, @Nullable Boolean does, String yes, String no) {
    if (does != null) {
      known.add(words.say(does ? yes : no));
    }
  }

  private Node grain(GrainSummary grain) {
    VBox lines = card(Texts.section(words.say("common.choice." + grain.grain().key())));
    lines
        .getChildren()
        .add(
            Texts.text(
                spread(
                    "desk.cloths.grain.stretch",
                    "desk.cloths.grain.stretch-one",
                    grain.stretch())));
    Repeats.Spread growth = grain.growth();
    if (growth != null) {
      lines
          .getChildren()
          .add(
              Texts.text(
                  spread("desk.cloths.grain.growth", "desk.cloths.grain.growth-one", growth)));
    }
    Repeats.Spread recovery = grain.recovery();
    RecoveryBand band = grain.band();
    if (recovery != null && band != null) {
      lines
          .getChildren()
          .add(
              Texts.text(
                  spread(
                      "desk.cloths.grain.recovery", "desk.cloths.grain.recovery-one", recovery)));
      lines
          .getChildren()
          .add(Texts.caption(words.say("desk.cloths.grain.band", band.name(), band.advice())));
    } else {
      lines.getChildren().add(Texts.caption(words.say("desk.cloths.grain.no-recovery")));
    }
    String pull = words.say("common.choice." + grain.pull().key());
    lines
        .getChildren()
        .add(
            Texts.caption(
                grain.left() == 0
                    ? words.say("desk.cloths.grain.count", grain.stretch().n(), pull)
                    : words.say(
                        "desk.cloths.grain.count-left", grain.stretch().n(), pull, grain.left())));
    int aside = card.aside(grain.grain());
    if (aside > 0) {
      lines.getChildren().add(Texts.caption(words.say("desk.cloths.grain.aside", aside)));
    }
    return lines;
  }

  private String spread(String key, String once, Repeats.Spread spread) {
    Double half = spread.halfWidth();
    String mean = Show.fixed(spread.mean(), 1);
    return half == null
        ? words.say(once, mean)
        : words.say(
            key, mean, Show.fixed(spread.mean() - half, 1), Show.fixed(spread.mean() + half, 1));
  }

  private Node sewn() {
    VBox lines = card(Texts.section(words.say("desk.cloths.sewn")));
    lines.getChildren().add(Texts.text(words.say("desk.cloths.sewn.count", card.pieces())));
    if (!card.best().isEmpty()) {
      FlowPane best = new FlowPane(8, 8);
      for (TestPiece piece : card.best()) {
        Button open = new Button(piece(piece));
        open.setOnAction(pressed -> model.openPiece(piece));
        best.getChildren().add(open);
      }
      lines.getChildren().addAll(Texts.caption(words.say("desk.cloths.sewn.best")), best);
    }
    return lines;
  }

  private String piece(TestPiece piece) {
    Integer grade = piece.seen().grade();
    String code = PieceCode.spoken(piece.code());
    return grade == null
        ? words.say("desk.cloths.sewn.piece", code, piece.setting().stitchName())
        : words.say("desk.cloths.sewn.graded", code, piece.setting().stitchName(), grade);
  }

  private void line(VBox lines, String key, String value) {
    if (!value.isBlank()) {
      lines.getChildren().add(Texts.text(words.say(key, value)));
    }
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : Show.upTo(value, 1);
  }

  private String length(@Nullable Double mm) {
    return mm == null ? "" : Show.length(mm, card.unit());
  }

  private static VBox card(Node first) {
    VBox card = new VBox(6, first);
    card.getStyleClass().add("card");
    card.setStyle("-fx-pref-width: 21.8em;");
    return card;
  }
}
