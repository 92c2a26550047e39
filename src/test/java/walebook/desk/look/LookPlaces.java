package walebook.desk.look;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.EmptyState;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.Notice;
import walebook.desk.common.NumberEntry;
import walebook.desk.common.NumberField;
import walebook.desk.common.PicturePane;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.Texts;
import walebook.desk.common.VerdictBadge;
import walebook.desk.common.WorkingPane;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;
import walebook.drawing.FaultKind;
import walebook.drawing.FaultPicture;
import walebook.drawing.GaugePicture;
import walebook.drawing.GaugeReading;
import walebook.drawing.IntervalBar;
import walebook.drawing.StitchForm;
import walebook.drawing.StitchPicture;
import walebook.quantity.Measured;
import walebook.quantity.Unit;
import walebook.words.Words;
import walebook.working.Caution;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Verdict;
import walebook.working.Working;

/** Invented places that show the shared controls in use. */
final class LookPlaces {
  private final Words words;

  LookPlaces(Words words) {
    this.words = words;
  }

  Node form() {
    NumberEntry gaugeLength = NumberEntry.length(Unit.MM, "gauge-length");
    gaugeLength.put(100.0);
    NumberEntry gave = NumberEntry.length(Unit.MM, "gave");
    gave.textProperty().set("1 1/2 in");
    NumberEntry wrong = NumberEntry.length(Unit.MM, "released");
    wrong.textProperty().set("10x4");
    wrong.settle();
    FieldGroup cloth =
        new FieldGroup("The cloth")
            .add(choice("cloth", "Cotton jersey with a little elastane, mid blue"), 22)
            .add(choice("grain along the seam", "course-wise"), 11)
            .add(number("layers", NumberEntry.whole("layers")), 6);
    FieldGroup machine =
        new FieldGroup(
            "The machine",
            choice("machine", "machine 3"),
            choice("stitch", "zigzag (304)"),
            number("width, mm", NumberEntry.plain("width")),
            number("length, mm", NumberEntry.plain("length")));
    FieldGroup measure =
        new FieldGroup(
            "The measure",
            number("marks before, mm", gaugeLength),
            number("gave at, mm", gave),
            number("after rest, mm", wrong));
    measure.below(new CheckBox("the seam held: the cloth stopped first"));
    PlaceFrame frame = new PlaceFrame(words, "Log a test piece");
    frame.context(new Label("Student 7  ·  evening class"));
    frame.work(cloth, machine, measure);
    WorkingPane pane = new WorkingPane(words);
    pane.show(working());
    pane.openProperty().set(true);
    GaugeReading reading = new GaugeReading(100.0, 152.0, GaugeReading.How.GAVE, 104.0, null, null);
    frame.means(
        new VBox(
            16,
            new PicturePane(words, new GaugePicture(reading, Unit.MM)),
            new PicturePane(words, new StitchPicture(StitchForm.ZIGZAG, 2.5, 1.5)),
            pane));
    frame.primary(new Button("Save piece"));
    frame.notice().noticeProperty().set(new Notice("saved 12 s ago", () -> {}));
    return frame;
  }

  Node pictures() {
    VBox gauges = new VBox(12, Texts.section("Cloth gauges"));
    gauges.getStyleClass().add("card");
    for (GaugeReading reading :
        List.of(
            new GaugeReading(100.0, 163.0, GaugeReading.How.HELD, 101.0, 200.0, 207.5),
            new GaugeReading(100.0, null, GaugeReading.How.STRETCHED, null, null, null),
            new GaugeReading(null, null, GaugeReading.How.STRETCHED, null, null, null))) {
      gauges.getChildren().add(new PicturePane(words, new GaugePicture(reading, Unit.CM)));
    }
    VBox stitches = new VBox(12, Texts.section("Stitches"));
    stitches.getStyleClass().add("card");
    for (StitchForm form : StitchForm.values()) {
      double width = form == StitchForm.THREE_STEP_ZIGZAG ? 6 : 4;
      stitches.getChildren().add(new PicturePane(words, new StitchPicture(form, width, 2.5)));
    }
    FlowPane both = new FlowPane(16, 16, gauges, stitches);
    return new PlaceFrame(words, "Pictures to scale").work(both);
  }

  Node plot() {
    Random random = new Random(7);
    List<DotRow> rows =
        IntStream.range(0, 5)
            .mapToObj(
                n -> {
                  double middle = 20 + 15 * n;
                  List<DotRow.Dot> dots =
                      IntStream.range(0, 9 + 4 * n)
                          .mapToObj(
                              i ->
                                  new DotRow.Dot(
                                      middle + 6 * random.nextGaussian(), n > 2 && i % 3 == 0))
                          .toList();
                  String label = "zigzag " + (n + 1) + " mm wide, 1.5 mm long, ballpoint needle 75";
                  return new DotRow(
                      n == 1 ? "straight" : label, dots, middle, middle - 5, middle + 6, n % 2);
                })
            .toList();
    VBox card =
        new VBox(
            16,
            Texts.section("Settings against outcome"),
            new PicturePane(words, new DotPlot("seam stretch, %", rows, 50.0)));
    card.getStyleClass().add("card");
    VBox bars = new VBox(8, Texts.section("Held to what the garment needs"));
    bars.getStyleClass().add("card");
    bars.getChildren()
        .addAll(
            new PicturePane(words, new IntervalBar(7, 9, 45.3, 93.7)),
            new PicturePane(words, new IntervalBar(0, 0, 0, 0)));
    return new PlaceFrame(words, "What the class found").work(table(), card, bars);
  }

  Node faults() {
    FlowPane all = new FlowPane(16, 16);
    for (FaultKind kind : FaultKind.values()) {
      VBox one =
          new VBox(
              6,
              new PicturePane(words, new FaultPicture(kind)),
              Texts.caption(kind.code().replace('-', ' ')));
      one.getStyleClass().add("card");
      all.getChildren().add(one);
    }
    VBox badges = new VBox(10);
    badges.getStyleClass().add("card");
    for (Verdict verdict : Verdict.values()) {
      badges.getChildren().add(new VerdictBadge(words, verdict));
    }
    return new PlaceFrame(words, "Faults and verdicts").work(all, badges);
  }

  Node empty() {
    return new PlaceFrame(words, "Term record")
        .work(
            new EmptyState(
                "Here will be this term's test pieces, ready to hand in.",
                "Log the first piece",
                () -> {}));
  }

  private Node table() {
    ColumnTable<String[]> table = new ColumnTable<>();
    table.words("setting", 14, row -> row[0]);
    table.figures("width, mm", 8, row -> Double.valueOf(row[1]), row -> row[1]);
    table.figures("seam stretch, %", 10, row -> Double.valueOf(row[2]), row -> row[2]);
    table.getItems().add(new String[] {"zigzag 1", "1.5", "31.4"});
    table.getItems().add(new String[] {"zigzag 2", "2.5", "47.1"});
    table.getItems().add(new String[] {"three-step", "5.0", "111.0"});
    table.setStyle("-fx-pref-height: 11em; -fx-min-height: 11em;");
    table.getSelectionModel().select(1);
    return table;
  }

  private NumberField number(String label, NumberEntry entry) {
    return new NumberField(words, label, "2.5", entry);
  }

  private ChoiceField<String> choice(String label, String chosen) {
    return new ChoiceField<>(
        words,
        label,
        FXCollections.observableArrayList(chosen, "another"),
        new SimpleObjectProperty<>(chosen),
        name -> name);
  }

  private static Working working() {
    return Working.named("stretch", Message.of("drawing.gauge.gave"))
        .step(
            Message.of("drawing.gauge.stretched"),
            "S = 100 × (L1 − L0) ÷ L0",
            "100 × (152 − 100) ÷ 100 = 52.0 %")
        .step(Message.of("drawing.gauge.back"), "G = 100 × (L2 − L0) ÷ L0", "4.0 %")
        .assume(Message.of("drawing.stitch.zigzag"))
        .caution(new Caution("needle", Message.of("drawing.fault.needle-holes")))
        .source(Source.Kind.COMMON_PRACTICE, "classes measure 100 mm between chalk marks")
        .result(Measured.of(52, Unit.PERCENT))
        .verdict(Verdict.MET)
        .says(Message.of("drawing.gauge.says-gave", "100 mm", "152 mm", "104 mm"));
  }
}
