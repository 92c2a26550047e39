package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.EmptyState;
import walebook.desk.common.Texts;
import walebook.drawing.Drawing;
import walebook.words.Words;

/**
 * A part of the place that shows what was found to its question, and shows it large.
 *
 * @param <T> what is found
 */
abstract class AskedPart<T> extends VBox implements PartView {
  private final AskingModel<T> model;
  private final Asking<T> asking;
  private final Around around;
  private final Set<FiltersView.Ask> asks = EnumSet.noneOf(FiltersView.Ask.class);

  AskedPart(AskingModel<T> model, Around around, FiltersView.Ask... asks) {
    super(16);
    this.model = model;
    this.asking = model.asking();
    this.around = around;
    this.asks.addAll(List.of(asks));
  }

  /** Shows what was found; null while nothing was, and for a book without a class. */
  abstract void show(@Nullable T found);

  /** What stands on the board; names are aliases here. */
  abstract List<Finding> large(T found);

  /** The same once all that it takes is there. */
  void large(T found, Consumer<List<Finding>> show) {
    show.accept(large(found));
  }

  /** How the part is called on the board; empty where what is compared says enough. */
  abstract String called();

  /** On how much it rests, for the board. */
  String foot(T found) {
    return "";
  }

  /** Begins to show; called when the part is made. */
  final void follow() {
    asking.foundProperty().addListener((from, old, now) -> show(now));
    show(asking.foundProperty().get());
  }

  @Override
  public final Node node() {
    return this;
  }

  @Override
  public final Set<FiltersView.Ask> asks() {
    return asks;
  }

  @Override
  public final Asking<T> asking() {
    return asking;
  }

  @Override
  public final void shown(boolean now) {
    asking.shown(now);
  }

  @Override
  public final void showLarge(Large board) {
    String title = boardTitle();
    if (asking.session().schoolClassProperty().get() == null) {
      board.show(new ClassBoard.Shown(title, List.of(), ""));
    } else {
      asking.forBoard(
          found ->
              large(
                  found,
                  findings -> board.show(new ClassBoard.Shown(title, findings, foot(found)))));
    }
  }

  /** Of what is asked now. */
  private String boardTitle() {
    FiltersViewModel filters = asking.filters();
    List<String> of = new ArrayList<>();
    if (asks.contains(FiltersView.Ask.LESSON)) {
      of.add(filters.lessonProperty().get().name());
    }
    if (asks.contains(FiltersView.Ask.CLOTH)) {
      of.add(filters.clothProperty().get().name());
    }
    if (asks.contains(FiltersView.Ask.OUTCOME)) {
      of.add(words().say("compare.outcome." + filters.outcomeProperty().get().key()));
    }
    of.add(called());
    of.removeIf(String::isEmpty);
    return words().say("desk.class.board.title", String.join(" · ", of));
  }

  final Words words() {
    return asking.words();
  }

  /** Nothing was found yet: a book without a class is told how to begin. */
  final void empty(String says, String begin, Runnable act) {
    if (asking.session().schoolClassProperty().get() == null) {
      getChildren().setAll(new EmptyState(says, begin, act));
    } else {
      // The place says that it is being worked out.
      getChildren().clear();
    }
  }

  final void empty() {
    empty(words().say("desk.class.empty"), words().say("desk.class.empty.begin"), model::logFirst);
  }

  /**
   * Nothing is there in what is asked: there may be in all lessons and cloths, or not yet at all.
   */
  final void nothing(String says) {
    FiltersViewModel filters = asking.filters();
    getChildren()
        .setAll(
            filters.isNarrowed()
                ? new EmptyState(
                    words().say("desk.class.narrowed"),
                    words().say("desk.class.ask-all"),
                    filters::widen)
                : new EmptyState(says, words().say("desk.class.empty.begin"), model::logFirst));
  }

  /** Below sentences about little: what all lessons and cloths have is one press away. */
  final void lookFurther() {
    FiltersViewModel filters = asking.filters();
    if (filters.isNarrowed()) {
      Button all = new Button(words().say("desk.class.ask-all"));
      all.setOnAction(pressed -> filters.widen());
      getChildren().add(all);
    }
  }

  /** Sentences and a plot, for the board; nothing where neither is there. */
  static List<Finding> large(List<String> says, @Nullable Drawing plot, String note) {
    return says.isEmpty() && plot == null ? List.of() : List.of(new Finding(says, plot, note));
  }

  /** On how many pieces it rests. */
  final String foot(int pieces, int setAside) {
    return words().say("desk.class.board.foot", pieces, setAside);
  }

  /** Does the steps of showing what was found one a frame, in the place of those not done yet. */
  final void inTurn(List<Runnable> steps) {
    around.inTurn().run(this, steps);
  }

  /** What the double arrows in a table's bars are. */
  final Label offScale() {
    return Texts.caption(words().say("desk.class.bars.off"));
  }

  static void seen(Node node, boolean seen) {
    node.setVisible(seen);
    node.setManaged(seen);
  }

  /** Puts a card where it belongs; one that has nothing to show keeps its place and is not seen. */
  final void stand(int place, Node card, boolean seen) {
    seen(card, seen);
    if (place == getChildren().size()) {
      getChildren().add(card);
    } else if (getChildren().get(place) != card) {
      getChildren().set(place, card);
    }
  }

  /** A card for a plot that can be copied. */
  final PlotCard card() {
    return new PlotCard(asking.session(), around.told());
  }

  /** A piece to be opened. */
  static Button link(String says, Runnable open) {
    Button link = new Button(says);
    link.getStyleClass().add("piece-link");
    link.setOnAction(pressed -> open.run());
    return link;
  }

  /** Shows a row's pieces below its table, until they are closed. */
  final void open(VBox pieces, String title, String says, List<Button> links) {
    FlowPane all = new FlowPane(8, 8);
    all.getChildren().setAll(links);
    Button close = new Button(words().say("desk.class.pieces.close"));
    close.getStyleClass().add("quiet");
    close.setOnAction(pressed -> pieces.getChildren().clear());
    pieces
        .getChildren()
        .setAll(
            Texts.section(title),
            Texts.text(says),
            Texts.caption(words().say("desk.class.pieces.note")),
            all,
            close);
  }
}
