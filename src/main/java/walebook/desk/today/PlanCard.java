package walebook.desk.today;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** My plan: each piece with what it asks, and what became of those that are done. */
final class PlanCard extends VBox {
  private final Words words;
  private final TodayViewModel model;

  PlanCard(Words words, TodayViewModel model, MyDay day) {
    this.words = words;
    this.model = model;
    getStyleClass().addAll("card", "plan");
    setVisible(!day.plan().isEmpty());
    setManaged(!day.plan().isEmpty());
    getChildren().add(Texts.section(words.say("desk.today.plan", day.done(), day.plan().size())));
    day.plan().forEach(each -> getChildren().add(row(each)));
  }

  private HBox row(PlanRow row) {
    Label mark = new Label(words.say(row.isDone() ? "desk.today.done" : "desk.today.open"));
    mark.getStyleClass().add("mark");
    VBox says = new VBox(Texts.text(words.say("desk.today.piece", row.number(), row.asks())));
    HBox.setHgrow(says, Priority.ALWAYS);
    String below = row.result().isEmpty() ? row.code() : row.code() + " · " + row.result();
    says.getChildren().add(Texts.caption(below));
    Button act = new Button(words.say(row.isDone() ? "desk.today.look" : "desk.today.log-this"));
    act.getStyleClass().add("quiet");
    act.setMinWidth(USE_PREF_SIZE);
    act.setAccessibleText(act.getText() + " " + row.code());
    act.setOnAction(pressed -> act(row));
    HBox line = new HBox(mark, says, act);
    line.getStyleClass().addAll("plan-row", row.isDone() ? "done" : "open");
    return line;
  }

  private void act(PlanRow row) {
    if (row.loggedId() == null) {
      model.logPlanned(row.plannedId());
    } else {
      model.open(row.loggedId());
    }
  }
}
