package walebook.desk.welcome;

import java.nio.file.Path;
import java.util.Objects;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import walebook.desk.common.FieldBox;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** Three ways in, side by side, and the books that were open lately. */
public final class WelcomeView extends StackPane {
  private final Words words;
  private final WelcomeViewModel model;

  public WelcomeView(Words words, WelcomeViewModel model) {
    this.words = words;
    this.model = model;
    getStyleClass().add("welcome");
    getStylesheets()
        .add(Objects.requireNonNull(WelcomeView.class.getResource("welcome.css")).toExternalForm());
    FlowPane ways = new FlowPane(newBook(), openBook(), demo());
    ways.getStyleClass().add("ways");
    Label problem = Texts.text("", "caution", "problem");
    problem.textProperty().bind(model.problemProperty());
    problem.visibleProperty().bind(model.problemProperty().isNotEmpty());
    problem.managedProperty().bind(problem.visibleProperty());
    VBox page =
        new VBox(
            Texts.text(words.say("desk.welcome.title"), "place-title"),
            Texts.text(words.say("desk.welcome.says"), "soft"),
            problem,
            ways);
    page.getStyleClass().add("page");
    page.disableProperty().bind(model.busyProperty());
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    getChildren().setAll(scroll);
    setAlignment(Pos.TOP_CENTER);
  }

  private Region newBook() {
    TextField name = new TextField();
    name.setPromptText(words.say("desk.welcome.name-example"));
    name.textProperty().bindBidirectional(model.nameProperty());
    name.setOnAction(entered -> model.make());
    FieldBox field = new FieldBox(words, words.say("desk.welcome.name"), name);
    Label problem = Texts.text("", "field-problem");
    problem.textProperty().bind(model.nameProblemProperty());
    problem.visibleProperty().bind(model.nameProblemProperty().isNotEmpty());
    problem.managedProperty().bind(problem.visibleProperty());
    field.getChildren().add(problem);
    Button make = button("desk.welcome.make", model::make);
    make.getStyleClass().add("primary");
    return card("desk.welcome.new", "desk.welcome.new-says", field, make);
  }

  private Region openBook() {
    VBox recent = new VBox();
    recent.getStyleClass().add("recent");
    if (!model.recent().isEmpty()) {
      recent.getChildren().add(Texts.caption(words.say("desk.welcome.recent")));
    }
    for (Path file : model.recent()) {
      Hyperlink link = new Hyperlink(String.valueOf(file.getFileName()));
      link.setTooltip(new Tooltip(file.toString()));
      link.setAccessibleText(words.say("desk.welcome.open-file", file));
      link.setOnAction(pressed -> model.open(file));
      recent.getChildren().add(link);
    }
    return card(
        "desk.welcome.open",
        "desk.welcome.open-says",
        button("desk.welcome.choose", model::open),
        recent);
  }

  private Region demo() {
    return card(
        "desk.welcome.demo",
        "desk.welcome.demo-says",
        button("desk.welcome.look-round", model::demo));
  }

  private Button button(String key, Runnable act) {
    Button button = new Button(words.say(key));
    button.setOnAction(pressed -> act.run());
    return button;
  }

  private Region card(String title, String says, Node... nodes) {
    VBox card = new VBox(Texts.section(words.say(title)), Texts.text(words.say(says), "soft"));
    card.getChildren().addAll(nodes);
    card.getStyleClass().addAll("card", "way");
    return card;
  }
}
