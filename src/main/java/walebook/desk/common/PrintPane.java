package walebook.desk.common;

import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import walebook.act.print.Naming;
import walebook.act.print.PrintPaper;
import walebook.record.Student;
import walebook.words.Words;

/** Chooses what is printed, on what, with names or codes; the button asks where. */
public final class PrintPane extends VBox {
  private final Words words;

  public PrintPane(Words words, PrintViewModel model, boolean namesHidden) {
    super(12);
    this.words = words;
    getStyleClass().add("card");
    getChildren().add(Texts.section(words.say("desk.common.print.title")));
    if (model.kinds().size() > 1) {
      getChildren()
          .add(
              new ChoiceField<>(
                  words,
                  words.say("desk.common.print.what"),
                  FXCollections.observableArrayList(model.kinds()),
                  model.kindProperty(),
                  this::kind));
    }
    Node labels = labels(model);
    shownFor(labels, model, PrintPaper.Kind.LABELS);
    ChoiceField<Student> student =
        new ChoiceField<>(
            words,
            words.say("desk.common.print.student"),
            model.students(),
            model.studentProperty(),
            each -> namesHidden ? each.alias() : each.name());
    shownFor(student, model, PrintPaper.Kind.RECORD);
    ChoiceField<Naming> names =
        new ChoiceField<>(
            words,
            words.say("desk.common.print.names"),
            FXCollections.observableArrayList(Naming.values()),
            model.namingProperty(),
            this::naming);
    names
        .visibleProperty()
        .bind(
            model
                .kindProperty()
                .map(kind -> kind != PrintPaper.Kind.HAND_OUT && kind != PrintPaper.Kind.KIT));
    names.managedProperty().bind(names.visibleProperty());
    Label says = Texts.text("", "strong");
    says.textProperty().bind(model.saysProperty());
    Button go = new Button(words.say("desk.common.print.go"));
    go.setOnAction(pressed -> model.print());
    go.disableProperty().bind(model.printingProperty());
    getChildren()
        .addAll(
            student,
            Texts.text(words.say("desk.common.print.paper"), "field-label"),
            new Segments<>(PrintViewModel.PAPERS, model.paperProperty(), this::paper),
            labels,
            names,
            go,
            says);
  }

  private Node labels(PrintViewModel model) {
    CheckBox logged = new CheckBox(words.say("desk.common.print.logged"));
    logged.setWrapText(true);
    logged.selectedProperty().bindBidirectional(model.loggedProperty());
    return new VBox(
        12,
        new ChoiceField<>(
            words,
            words.say("desk.common.print.grid"),
            model.grids(),
            model.gridProperty(),
            key -> key.replace("x", " × ")),
        new TypedField(
            words, words.say("desk.common.print.start"), "1", model.fields().field("start")),
        logged,
        Texts.caption(words.say("desk.common.print.arrow")));
  }

  private static void shownFor(Node node, PrintViewModel model, PrintPaper.Kind kind) {
    node.visibleProperty().bind(model.kindProperty().map(now -> now == kind));
    node.managedProperty().bind(node.visibleProperty());
  }

  private String kind(PrintPaper.Kind kind) {
    return words.say(
        switch (kind) {
          case LABELS -> "desk.common.print.labels";
          case CARDS -> "desk.common.print.cards";
          case GRID -> "desk.common.print.wall-grid";
          case PLAN -> "desk.common.print.plan";
          case HAND_OUT -> "desk.common.print.hand-out";
          case KIT -> "desk.common.print.kit";
          case RECORD -> "desk.common.print.record";
          case MARKS -> "desk.common.print.marks";
        });
  }

  private String paper(String key) {
    return words.say(key.equals("a4") ? "desk.common.print.a4" : "desk.common.print.letter");
  }

  private String naming(Naming naming) {
    return words.say(
        switch (naming) {
          case NAME -> "desk.common.print.by-name";
          case INITIALS -> "desk.common.print.by-initials";
          case CODE -> "desk.common.print.by-code";
        });
  }
}
