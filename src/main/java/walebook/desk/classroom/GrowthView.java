package walebook.desk.classroom;

import java.util.List;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.EmptyState;
import walebook.desk.common.Texts;
import walebook.drawing.DotPlot;
import walebook.words.Words;

/** How one student grows. */
final class GrowthView extends AskedPart<GrowthViewModel.Grown> {
  private final GrowthViewModel model;
  private final Words words;
  private final ChoiceField<@Nullable Choice> who;
  private final VBox grown = new VBox(16);

  GrowthView(GrowthViewModel model, Around around) {
    super(model, around);
    this.words = model.words();
    this.model = model;
    who =
        new ChoiceField<>(
            words,
            words.say("desk.class.growth.student"),
            model.students(),
            model.studentProperty(),
            each -> each == null ? "" : each.name());
    who.setStyle("-fx-pref-width: 20em;");
    who.setMaxWidth(USE_PREF_SIZE);
    follow();
    getChildren().setAll(who, grown);
  }

  @Override
  String called() {
    return words().say("desk.class.growth");
  }

  @Override
  List<Finding> large(GrowthViewModel.Grown found) {
    // Nobody is named, not even by an alias.
    return large(found.says(), found.plot(), words.say("desk.class.growth.note"));
  }

  @Override
  void show(GrowthViewModel.@Nullable Grown found) {
    boolean nobody =
        found == null
            ? model.session().schoolClassProperty().get() == null
            : found.names().isEmpty();
    who.setVisible(!nobody);
    who.setManaged(!nobody);
    if (nobody) {
      grown
          .getChildren()
          .setAll(
              new EmptyState(
                  words.say("desk.class.growth.empty"),
                  words.say("desk.class.progress.begin"),
                  model::enrol));
      return;
    }
    if (found == null || found.says().isEmpty()) {
      grown.getChildren().setAll(Texts.caption(words.say("desk.class.growth.choose")));
      return;
    }
    grown.getChildren().setAll(Sentences.card(found.says(), ""));
    DotPlot plot = found.plot();
    if (plot != null) {
      PlotCard card = card();
      card.show(
          words.say("desk.class.growth.plot"),
          words.say("desk.class.growth.note"),
          plot,
          found::table);
      grown.getChildren().add(card);
    }
  }
}
