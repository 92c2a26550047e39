package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.Notice;
import walebook.desk.common.PicturePane;
import walebook.desk.common.Texts;
import walebook.drawing.DotPlot;
import walebook.words.Words;

/** How one student grows. */
final class GrowthView extends VBox implements PartView {
  private final GrowthViewModel model;
  private final Words words;
  private final Consumer<Notice> told;
  private final VBox grown = new VBox(16);

  GrowthView(GrowthViewModel model, Consumer<Notice> told) {
    super(16);
    this.model = model;
    this.words = model.asking().words();
    this.told = told;
    ChoiceField<@Nullable Choice> who =
        new ChoiceField<>(
            words,
            words.say("desk.class.growth.student"),
            model.students(),
            model.studentProperty(),
            each -> each == null ? "" : each.name());
    who.setStyle("-fx-pref-width: 20em;");
    who.setMaxWidth(USE_PREF_SIZE);
    model.foundProperty().addListener((from, old, now) -> showGrown(now));
    showGrown(model.foundProperty().get());
    getChildren().setAll(who, grown);
  }

  @Override
  public Node node() {
    return this;
  }

  @Override
  public Set<FiltersView.Ask> asks() {
    return Set.of();
  }

  @Override
  public void shown(boolean now) {
    model.asking().shown(now);
  }

  @Override
  public void showLarge(Large board) {
    model
        .asking()
        .forBoard(
            found -> {
              // Nobody is named, not even by an alias.
              List<Node> lines = new ArrayList<>();
              found.says().forEach(each -> lines.add(Texts.text(each, "strong")));
              DotPlot plot = found.plot();
              if (plot != null) {
                lines.add(new PicturePane(words, plot));
              }
              board.show(lines);
            });
  }

  private void showGrown(GrowthViewModel.@Nullable Grown found) {
    if (found == null || found.says().isEmpty()) {
      grown.getChildren().setAll(Texts.caption(words.say("desk.class.growth.choose")));
      return;
    }
    grown.getChildren().setAll(Sentences.card(found.says(), ""));
    DotPlot plot = found.plot();
    if (plot != null) {
      PlotCard card = new PlotCard(model.filters().session(), told);
      card.show(
          words.say("desk.class.growth.plot"),
          words.say("desk.class.growth.note"),
          plot,
          found.table());
      grown.getChildren().add(card);
    }
  }
}
