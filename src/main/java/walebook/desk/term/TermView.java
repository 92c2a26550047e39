package walebook.desk.term;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import walebook.act.print.PrintPaper;
import walebook.book.BookFiles;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.PrintPane;
import walebook.desk.common.PrintViewModel;
import walebook.desk.common.Segments;
import walebook.desk.common.Session;
import walebook.desk.common.Texts;
import walebook.record.SchoolClass;
import walebook.words.Words;

/** The place of the term's record: students, machines, export; first of all, starting a class. */
public final class TermView extends BorderPane {
  private static final List<TermViewModel.Part> PARTS =
      List.of(
          TermViewModel.Part.STUDENTS,
          TermViewModel.Part.MACHINES,
          TermViewModel.Part.ASSESS,
          TermViewModel.Part.EXPORT,
          TermViewModel.Part.PRINT,
          TermViewModel.Part.BRING,
          TermViewModel.Part.GATHER,
          TermViewModel.Part.BIN);

  private final Words words;
  private final Session session;
  private final TermViewModel model;
  private final RosterViewModel roster;
  private final MachinesViewModel machines;
  private final PrintViewModel print;
  private final BringViewModel bring;
  private final BinViewModel bin;
  private final RosterPane rosterPane;
  private final MachinesPane machinesPane;
  private final MachineCardPane machineCard;
  private final ExportPane exportPane;
  private final BringPane bringPane;
  private final GatherViewModel gather;
  private final AssessViewModel assess;
  private final AssessPane assessPane;

  /** A view over a session; {@code files} opens the books to be gathered. */
  public TermView(Session session, BookFiles files) {
    this.session = session;
    this.words = session.words();
    this.model = new TermViewModel(session);
    this.roster = new RosterViewModel(session);
    this.machines = new MachinesViewModel(session);
    this.print =
        new PrintViewModel(session, null, List.of(PrintPaper.Kind.RECORD, PrintPaper.Kind.MARKS));
    this.bring = new BringViewModel(session);
    this.gather = new GatherViewModel(session, files);
    this.bin = new BinViewModel(session);
    this.assess = new AssessViewModel(session);
    assessPane = new AssessPane(words, assess);
    rosterPane = new RosterPane(words, roster, session.namesHiddenProperty());
    machinesPane = new MachinesPane(words, machines, session.tables());
    machineCard = new MachineCardPane(words, machines);
    exportPane = new ExportPane(words, new ExportViewModel(session));
    bringPane = new BringPane(words, bring);
    model.partProperty().addListener((from, old, now) -> show());
    model.loadedProperty().addListener((from, old, now) -> show());
    session.schoolClassProperty().addListener((from, old, now) -> show());
    machines.editingProperty().addListener((from, old, now) -> show());
    show();
  }

  /** Keeps what is being typed; called before the book is closed. */
  public void rest() {
    assess.criteria().rest();
    roster.notes().rest();
  }

  private void show() {
    PlaceFrame frame = new PlaceFrame(words, words.say("desk.term.title"));
    setCenter(frame);
    if (!model.loadedProperty().get()) {
      return;
    }
    boolean none = session.schoolClassProperty().get() == null;
    if (none || model.partProperty().get() == TermViewModel.Part.START) {
      start(frame, none);
      return;
    }
    frame.context(context());
    Segments<TermViewModel.Part> parts =
        new Segments<>(PARTS, model.partProperty(), this::partName);
    switch (model.partProperty().get()) {
      case MACHINES -> machines(frame, parts);
      case EXPORT -> {
        exportPane.foot(frame);
        frame.parts(parts).work(exportPane);
      }
      case BRING -> {
        bringPane.foot(frame);
        frame.parts(parts).work(bringPane);
      }
      case GATHER -> {
        Button go = new Button(words.say("desk.term.gather.go"));
        go.setOnAction(pressed -> gather.gather());
        go.disableProperty().bind(gather.readyProperty().not());
        frame.parts(parts).work(new GatherPane(words, gather)).primary(go);
      }
      case ASSESS -> {
        frame.notice().noticeProperty().bind(assess.noticeProperty());
        frame.parts(parts).work(assessPane);
      }
      case BIN -> {
        frame.notice().noticeProperty().bind(bin.noticeProperty());
        frame.parts(parts).work(new BinPane(session, bin));
      }
      case PRINT ->
          frame.parts(parts).work(new PrintPane(words, print, session.namesHiddenProperty().get()));
      default -> {
        Button begin = new Button(words.say("desk.term.another-class"));
        begin.getStyleClass().add("quiet");
        begin.setOnAction(pressed -> model.partProperty().set(TermViewModel.Part.START));
        frame.notice().noticeProperty().bind(roster.noticeProperty());
        // Not at the foot, where a second press on the button that began this class would fall.
        List<Node> context = new ArrayList<>(List.of(context()));
        context.add(begin);
        frame.context(context.toArray(Node[]::new)).parts(parts).work(rosterPane);
      }
    }
  }

  private void start(PlaceFrame frame, boolean first) {
    StartClassViewModel start = new StartClassViewModel(session, model::begun);
    Button begin = new Button(words.say("desk.term.start.go"));
    begin.setOnAction(pressed -> start.start());
    if (!first) {
      Button back = new Button(words.say("desk.term.back"));
      back.getStyleClass().add("quiet");
      back.setOnAction(pressed -> model.partProperty().set(TermViewModel.Part.STUDENTS));
      frame.context(back);
    }
    frame.work(new StartClassPane(words, start)).primary(begin);
  }

  private void machines(PlaceFrame frame, Node parts) {
    if (machines.editingProperty().get()) {
      Button back = new Button(words.say("desk.term.back-without"));
      back.getStyleClass().add("quiet");
      back.setOnAction(pressed -> machines.close());
      Button save = new Button();
      save.textProperty()
          .bind(
              machines
                  .fields()
                  .asksProperty()
                  .map(now -> words.say(now ? "desk.common.save-anyway" : "desk.common.save")));
      save.setOnAction(pressed -> machines.save());
      frame.context(back).work(machineCard).primary(save);
      return;
    }
    Button add = new Button(words.say("desk.term.machines.add"));
    add.setOnAction(pressed -> machines.open(null));
    frame.parts(parts).work(machinesPane).primary(add);
  }

  private Node[] context() {
    Label term = Texts.text("", "soft");
    term.textProperty().bind(model.termProperty());
    if (model.classes().size() < 2) {
      // One text wraps as a whole; two beside each other squeeze the second.
      Label name = Texts.text("", "soft");
      name.textProperty()
          .bind(
              Bindings.createStringBinding(
                  this::classAndTerm, session.schoolClassProperty(), model.termProperty()));
      return new Node[] {name};
    }
    ComboBox<SchoolClass> choose = new ComboBox<>(model.classes());
    choose.setAccessibleText(words.say("desk.term.choose-class"));
    choose.setConverter(new ClassName());
    choose.setValue(session.schoolClassProperty().get());
    choose.setOnAction(
        picked -> {
          SchoolClass other = choose.getValue();
          if (other != null) {
            model.take(other);
          }
        });
    return new Node[] {choose, term};
  }

  private String classAndTerm() {
    SchoolClass of = session.schoolClassProperty().get();
    if (of == null) {
      return model.termProperty().get();
    }
    String name =
        of.meets().isBlank() ? of.name() : words.say("desk.term.class", of.name(), of.meets());
    return name + "\n" + model.termProperty().get();
  }

  private String partName(TermViewModel.Part part) {
    return words.say(
        switch (part) {
          case STUDENTS -> "desk.term.students";
          case MACHINES -> "desk.term.machines";
          case EXPORT -> "desk.term.export";
          case GATHER -> "desk.term.gather";
          case PRINT -> "desk.term.print";
          case ASSESS -> "desk.term.assess";
          case BRING -> "desk.term.bring";
          case BIN -> "desk.term.bin";
          case START -> "desk.term.another-class";
        });
  }

  private static final class ClassName extends StringConverter<SchoolClass> {
    @Override
    public String toString(@Nullable SchoolClass of) {
      return of == null ? "" : of.name();
    }

    @Override
    public SchoolClass fromString(String text) {
      throw new UnsupportedOperationException("classes are picked, not typed");
    }
  }
}
