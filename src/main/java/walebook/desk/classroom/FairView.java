package walebook.desk.classroom;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.compare.Dot;
import walebook.compare.Outcome;
import walebook.desk.common.EmptyState;
import walebook.desk.common.InTurn;
import walebook.desk.common.Notice;
import walebook.desk.common.Texts;
import walebook.drawing.DotPlot;
import walebook.drawing.Drawing;
import walebook.drawing.SmallMultiples;
import walebook.words.Words;

/** Settings compared: the sentences first, then the table, the dots, factors, best and worst. */
final class FairView extends AskedPart<FairFound> {
  private static final int PHOTO = 150;

  private final FairViewModel model;
  private final Words words;
  private final VBox pieces = new VBox(8);
  private final InTurn inTurn = new InTurn(this);

  FairView(FairViewModel model, Consumer<Notice> told) {
    super(model, told, FiltersView.Ask.values());
    this.model = model;
    this.words = model.words();
    follow();
  }

  @Override
  List<Node> large(FairFound found) {
    return large(found.says(), found.plot());
  }

  @Override
  void show(@Nullable FairFound found) {
    inTurn.stop();
    pieces.getChildren().clear();
    if (found == null) {
      empty();
      return;
    }
    if (found.comparison().isEmpty()) {
      String says = String.join(" ", found.says());
      boolean other = found.comparison().without() > 0;
      getChildren()
          .setAll(
              other
                  ? new EmptyState(says, words.say("desk.class.ask-held"), model::askHeld)
                  : new EmptyState(says, words.say("desk.class.empty.begin"), model::logFirst));
      return;
    }
    List<Supplier<Node>> cards = new ArrayList<>();
    cards.add(() -> Sentences.card(found.says(), found.same()));
    cards.add(() -> table(found));
    DotPlot plot = found.plot();
    if (plot != null) {
      cards.add(() -> plot(found, plot));
    }
    if (!found.pairs().isEmpty()) {
      cards.add(() -> pairs(found));
    }
    factors(found, cards);
    if (!found.best().isEmpty()) {
      cards.add(() -> standouts(found));
    }
    inTurn.show(cards);
  }

  private Node pairs(FairFound found) {
    VBox card = new VBox(8, Texts.section(words.say("desk.class.pairs.title")));
    card.getStyleClass().add("card");
    card.getChildren()
        .addAll(
            FairTables.pairs(words, found),
            Texts.caption(words.say("desk.class.pairs.note")),
            card().button(FairTables.pairs(words, found.pairs(), found.pValues())));
    return card;
  }

  private Node table(FairFound found) {
    FairTables.Opened open = row -> open(found, row);
    return new VBox(
        8,
        FairTables.settings(words, found, open),
        pieces,
        Texts.caption(words.say("desk.class.set-aside", found.comparison().setAside())),
        Texts.caption(words.say("desk.class.fair.note")));
  }

  private Node plot(FairFound found, DotPlot plot) {
    PlotCard card = card();
    Outcome outcome = found.comparison().question().outcome();
    card.show(
        words.say("desk.class.plot.title"),
        words.say(outcome.isRate() ? "desk.class.plot.rate" : "desk.class.plot.interval"),
        plot,
        found.table(FairTables.header(words)));
    return card;
  }

  private void factors(FairFound found, List<Supplier<Node>> cards) {
    SmallMultiples single = found.single();
    if (single != null) {
      cards.add(
          () ->
              card(
                  words.say("desk.class.single.title"),
                  words.say("desk.class.single.note"),
                  single,
                  FairTables.panels(words, single)));
    }
    for (FairFound.Against each : found.against()) {
      cards.add(
          () ->
              card(
                  words.say("desk.class.against.title", each.factor()),
                  each.says(),
                  each.plot(),
                  FairTables.points(each)));
    }
    SmallMultiples grids = found.grids();
    if (grids != null) {
      cards.add(
          () ->
              card(
                  words.say("desk.class.grid"),
                  words.say("desk.class.grid.note"),
                  grids,
                  FairTables.grids(grids)));
    }
  }

  private Node card(String title, String note, Drawing drawing, List<List<String>> table) {
    PlotCard card = card();
    card.show(title, note, drawing, table);
    return card;
  }

  private void open(FairFound found, FairFound.Row row) {
    Outcome outcome = found.comparison().question().outcome();
    List<Button> links =
        row.found().dots().stream()
            .map(dot -> link(dot, FairViewModel.piece(words, dot, outcome)))
            .toList();
    String says =
        words.say(
            "desk.class.fair.row", row.found().pieces(), row.found().students(), row.middle());
    open(pieces, row.setting(), says, links);
  }

  private Button link(Dot dot, String says) {
    return link(says, () -> model.openPiece(dot.pieceId()));
  }

  private Node standouts(FairFound found) {
    VBox card = new VBox(8);
    card.getStyleClass().add("card");
    card.getChildren()
        .setAll(
            Texts.section(words.say("desk.class.best")),
            strip(found, found.best()),
            Texts.section(words.say("desk.class.worst")),
            strip(found, found.worst()));
    return card;
  }

  private Node strip(FairFound found, List<FairFound.Standout> some) {
    FlowPane strip = new FlowPane(16, 8);
    for (FairFound.Standout each : some) {
      Button open = link(each.dot(), each.says());
      byte[] photo = found.photos().get(each.dot().pieceId());
      if (photo != null) {
        ImageView view = new ImageView(new Image(new ByteArrayInputStream(photo)));
        view.setPreserveRatio(true);
        view.setFitHeight(PHOTO);
        open.setGraphic(view);
        open.setContentDisplay(ContentDisplay.TOP);
      }
      strip.getChildren().add(open);
    }
    return strip;
  }
}
