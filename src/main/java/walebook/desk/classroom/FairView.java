package walebook.desk.classroom;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.compare.Dot;
import walebook.compare.Outcome;
import walebook.desk.common.EmptyState;
import walebook.desk.common.Texts;
import walebook.drawing.DotPlot;
import walebook.drawing.SmallMultiples;
import walebook.drawing.ValueBar;
import walebook.words.Words;

/**
 * Settings compared: the sentences first, then the table, the dots, factors, best and worst. The
 * cards stay and show one comparison after the other, each in a frame of its own: making them anew
 * would cost most of what a frame may take.
 */
final class FairView extends AskedPart<FairFound> {
  private static final int PHOTO = 150;

  /** The longer side of a photo on the board, px. */
  private static final int ON_BOARD = 700;

  private final FairViewModel model;
  private final Words words;
  private final FairRows rows;
  private final FairPairs pairs;
  private final VBox pieces = new VBox(8);
  private final Label setAside = Texts.caption("");
  private final Label off;
  private final VBox table;
  private final PlotCard plot = card();
  private final VBox pairsCard = new VBox(8);
  private final Label pairsNote = Texts.caption("");
  private final PlotCard single = card();
  private final VBox against = new VBox(16);
  private final PlotCard grids = card();
  private final VBox standouts = new VBox(8);
  private @Nullable FairFound shown;

  FairView(FairViewModel model, Around around) {
    super(model, around, FiltersView.Ask.values());
    this.model = model;
    this.words = model.words();
    rows = new FairRows(words, this::open);
    pairs = new FairPairs(words);
    off = offScale();
    Label note = Texts.caption(words.say("desk.class.fair.note"));
    table = new VBox(8, rows, pieces, setAside, off, note);
    pairsCard.getStyleClass().add("card");
    pairsCard
        .getChildren()
        .setAll(
            Texts.section(words.say("desk.class.pairs.title")),
            pairs,
            pairsNote,
            card().button(this::copiedPairs));
    standouts.getStyleClass().add("card");
    follow();
  }

  @Override
  String called() {
    return "";
  }

  @Override
  List<Finding> large(FairFound found) {
    boolean rate = found.comparison().question().outcome().isRate();
    String note = words.say(rate ? "desk.class.plot.rate" : "desk.class.plot.interval");
    return large(found.says(), found.plot(), note);
  }

  /** The photos of the best and the worst come after the rest. */
  @Override
  void large(FairFound found, Consumer<List<Finding>> show) {
    model
        .session()
        .run(
            progress -> images(model.photos(found)),
            images -> {
              List<Finding> all = new ArrayList<>(large(found));
              photos(words.say("desk.class.best"), found.best(), images, all);
              photos(words.say("desk.class.worst"), found.worst(), images, all);
              show.accept(all);
            });
  }

  /** Unpacked away from the window, no larger than the screen needs them. */
  private static Map<UUID, Image> images(Map<UUID, byte[]> photos) {
    Map<UUID, Image> images = new HashMap<>();
    photos.forEach(
        (piece, photo) ->
            images.put(
                piece, new Image(new ByteArrayInputStream(photo), ON_BOARD, ON_BOARD, true, true)));
    return images;
  }

  private static void photos(
      String title, List<FairFound.Standout> some, Map<UUID, Image> images, List<Finding> all) {
    List<Finding.Photo> photos = new ArrayList<>();
    for (FairFound.Standout each : some) {
      Image image = images.get(each.dot().pieceId());
      if (image != null) {
        photos.add(new Finding.Photo(each.says(), image));
      }
    }
    if (!photos.isEmpty()) {
      all.add(new Finding(List.of(title), null, "", photos));
    }
  }

  @Override
  String foot(FairFound found) {
    return FairViewModel.foot(words, found);
  }

  @Override
  void show(@Nullable FairFound found) {
    inTurn(List.of());
    pieces.getChildren().clear();
    shown = found;
    if (found == null) {
      empty();
    } else if (found.comparison().isEmpty()) {
      String says = String.join(" ", found.says());
      if (found.comparison().without() > 0) {
        getChildren()
            .setAll(new EmptyState(says, words.say("desk.class.ask-held"), model::askHeld));
      } else {
        nothing(says);
      }
    } else {
      inTurn(steps(found));
    }
  }

  private List<Runnable> steps(FairFound found) {
    List<Runnable> steps = new ArrayList<>();
    steps.add(() -> stand(0, Sentences.card(found.says(), found.same()), true));
    steps.add(
        () -> {
          rows.head(found);
          setAside.setText(words.say("desk.class.set-aside", found.comparison().setAside()));
          seen(off, ValueBar.isAnyOff(found.rows().stream().map(FairFound.Row::bar).toList()));
          stand(1, table, true);
        });
    steps.addAll(rows.others(found));
    steps.add(() -> plot(found));
    steps.add(
        () -> {
          pairsNote.setText(
              words.say(found.pValues() ? "desk.class.pairs.note-p" : "desk.class.pairs.note"));
          stand(3, pairsCard, !found.pairs().isEmpty());
        });
    steps.addAll(pairs.others(found));
    steps.add(() -> single(found));
    steps.add(() -> stand(5, against, !found.against().isEmpty()));
    for (int i = 0; i < Math.max(against.getChildren().size(), found.against().size()); i++) {
      int nth = i;
      steps.add(() -> against(found, nth));
    }
    steps.add(() -> grids(found));
    steps.add(() -> standouts(found));
    return steps;
  }

  private void plot(FairFound found) {
    DotPlot drawing = found.plot();
    if (drawing != null) {
      boolean rate = found.comparison().question().outcome().isRate();
      plot.show(
          words.say("desk.class.plot.title"),
          words.say(rate ? "desk.class.plot.rate" : "desk.class.plot.interval"),
          drawing,
          () -> found.table(FairTables.header(words)));
    }
    stand(2, plot, drawing != null);
  }

  private List<List<String>> copiedPairs() {
    FairFound found = shown;
    return found == null ? List.of() : FairTables.pairs(words, found.pairs(), found.pValues());
  }

  private void single(FairFound found) {
    SmallMultiples drawing = found.single();
    if (drawing != null) {
      single.show(
          words.say("desk.class.single.title"),
          words.say("desk.class.single.note"),
          drawing,
          () -> FairTables.panels(words, drawing));
    }
    stand(4, single, drawing != null);
  }

  private void against(FairFound found, int nth) {
    List<Node> cards = against.getChildren();
    if (nth >= found.against().size()) {
      cards.remove(cards.size() - 1);
      return;
    }
    if (nth == cards.size()) {
      cards.add(card());
    }
    FairFound.Against each = found.against().get(nth);
    ((PlotCard) cards.get(nth))
        .show(
            words.say("desk.class.against.title", each.factor()),
            each.says(),
            each.plot(),
            () -> FairTables.points(each));
  }

  private void grids(FairFound found) {
    SmallMultiples drawing = found.grids();
    if (drawing != null) {
      grids.show(
          words.say("desk.class.grid"),
          words.say("desk.class.grid.note"),
          drawing,
          () -> FairTables.grids(words, drawing));
    }
    stand(6, grids, drawing != null);
  }

  private void open(FairFound.Row row) {
    FairFound found = shown;
    if (found == null) {
      return;
    }
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

  private void standouts(FairFound found) {
    standouts.getChildren().clear();
    strip("desk.class.best", found, found.best());
    strip("desk.class.worst", found, found.worst());
    strip("desk.class.standout.odd", found, found.odd());
    stand(7, standouts, !standouts.getChildren().isEmpty());
  }

  private void strip(String title, FairFound found, List<FairFound.Standout> some) {
    if (!some.isEmpty()) {
      standouts.getChildren().addAll(Texts.section(words.say(title)), strip(found, some));
    }
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
