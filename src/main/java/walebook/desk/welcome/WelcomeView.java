package walebook.desk.welcome;

import java.nio.file.Path;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.geometry.Insets;
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
import walebook.book.RescueReport;
import walebook.desk.common.BackupsPane;
import walebook.desk.common.BackupsViewModel;
import walebook.desk.common.FieldBox;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** Three ways in, side by side, and the books that were open lately. */
public final class WelcomeView extends StackPane {
  private final Words words;
  private final WelcomeViewModel model;
  private final Backups backups;
  private final VBox damage = new VBox(10);

  /** Where the backups of a damaged book come from. */
  public interface Backups {
    /**
     * The backups of a book.
     *
     * @param goBack given the backup that is to be gone back to
     */
    BackupsViewModel of(Path book, Consumer<Path> goBack);
  }

  public WelcomeView(Words words, WelcomeViewModel model, Backups backups) {
    this.backups = backups;
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
            damage,
            ways);
    model.damagedProperty().addListener((Observable changed) -> showDamage());
    model.rescuedProperty().addListener((Observable changed) -> showDamage());
    showDamage();
    page.getStyleClass().add("page");
    page.disableProperty().bind(model.busyProperty());
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    Label busy = Texts.text(words.say("desk.welcome.busy"), "strong");
    busy.visibleProperty().bind(model.busyProperty());
    setMargin(busy, new Insets(8));
    setAlignment(busy, Pos.TOP_CENTER);
    getChildren().setAll(scroll, busy);
    setAlignment(Pos.TOP_CENTER);
  }

  private void showDamage() {
    damage.getChildren().clear();
    damage.getStyleClass().remove("card");
    Path file = model.damagedProperty().get();
    damage.setManaged(file != null);
    if (file == null) {
      return;
    }
    damage.getStyleClass().add("card");
    damage
        .getChildren()
        .addAll(
            Texts.section(words.say("desk.welcome.damaged")),
            Texts.text(words.say("desk.welcome.damaged-says"), "soft"));
    RescueReport report = model.rescuedProperty().get();
    if (report == null) {
      damage
          .getChildren()
          .addAll(
              new FlowPane(
                  8,
                  8,
                  button("desk.welcome.rescue", model::rescue),
                  button("desk.welcome.leave", model::leave)),
              goBack(file));
    } else {
      long photos =
          report.tables().stream()
              .filter(each -> each.name().equals("photo_image"))
              .mapToLong(RescueReport.Table::out)
              .sum();
      damage
          .getChildren()
          .add(
              Texts.text(
                  words.say(
                      "desk.welcome.rescued",
                      report.out(),
                      report.lost(),
                      photos,
                      report.standIns())));
      damage
          .getChildren()
          .add(Texts.text(words.say("desk.welcome.rescued-into", report.into()), "soft"));
      if (!report.lostPieces().isEmpty()) {
        damage
            .getChildren()
            .add(
                Texts.text(
                    words.say("desk.welcome.lost-pieces", String.join(" ", report.lostPieces()))));
      }
      damage.getChildren().add(button("desk.welcome.open-rescued", model::openRescued));
    }
  }

  /** The backups, where there are any. */
  private Region goBack(Path file) {
    BackupsViewModel found = backups.of(file, model::goBack);
    VBox pane =
        new VBox(
            8,
            Texts.section(words.say("desk.welcome.damaged-backups")),
            new BackupsPane(words, found, false));
    pane.visibleProperty().bind(Bindings.isNotEmpty(found.backups()));
    pane.managedProperty().bind(pane.visibleProperty());
    return pane;
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
    for (RecentBook book : model.recent()) {
      Hyperlink link = new Hyperlink(book.name());
      link.setWrapText(true);
      link.setTooltip(new Tooltip(book.file().toString()));
      link.setAccessibleText(words.say("desk.welcome.open-file", book.file()));
      link.setOnAction(pressed -> model.open(book.file()));
      recent.getChildren().add(link);
      if (!book.folder().isEmpty()) {
        recent.getChildren().add(Texts.caption(book.folder()));
      }
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
