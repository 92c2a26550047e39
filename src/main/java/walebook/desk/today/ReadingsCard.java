package walebook.desk.today;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** What I am to measure: the next reading large, then each cloth with how many are done. */
final class ReadingsCard extends VBox {
  private final Words words;
  private final TodayViewModel model;

  ReadingsCard(Words words, TodayViewModel model, MyReadings readings) {
    this.words = words;
    this.model = model;
    getStyleClass().addAll("card", "plan");
    setVisible(!readings.lines().isEmpty());
    setManaged(isVisible());
    MyReadings.Next next = readings.next();
    if (next == null) {
      getChildren().add(Texts.section(words.say("desk.today.reading.all-done")));
    } else {
      VBox lines = new VBox();
      lines.getStyleClass().add("settings");
      next.says().forEach(each -> lines.getChildren().add(Texts.text("• " + each)));
      VBox large = new VBox(Texts.section(words.say("desk.today.reading.next")), lines);
      large.getStyleClass().add("next-piece");
      getChildren().add(large);
    }
    getChildren()
        .add(
            Texts.section(words.say("desk.today.reading.plan", readings.done(), readings.asked())));
    readings.lines().forEach(each -> getChildren().add(row(each)));
  }

  private HBox row(MyReadings.Line line) {
    Label mark = new Label(words.say(line.isDone() ? "desk.today.done" : "desk.today.open"));
    mark.getStyleClass().add("mark");
    String count = words.say("desk.today.reading.count", line.done(), line.of());
    String below = line.result().isEmpty() ? count : count + ": " + line.result();
    VBox says = new VBox(Texts.text(line.asks()), Texts.caption(below));
    HBox.setHgrow(says, Priority.ALWAYS);
    HBox row = new HBox(mark, says);
    row.getStyleClass().addAll("plan-row", line.isDone() ? "done" : "open");
    if (!line.isDone()) {
      Button measure = new Button(words.say("desk.today.reading.measure-this"));
      measure.getStyleClass().add("quiet");
      measure.setMinWidth(USE_PREF_SIZE);
      measure.setAccessibleText(measure.getText() + " " + line.asks());
      measure.setOnAction(pressed -> model.measure(line.plannedId()));
      row.getChildren().add(measure);
    }
    return row;
  }
}
