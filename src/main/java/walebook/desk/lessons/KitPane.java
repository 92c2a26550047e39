package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableColumn;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.PickedField;
import walebook.desk.common.PicturePane;
import walebook.desk.common.Segments;
import walebook.desk.common.Texts;
import walebook.desk.common.TypedField;
import walebook.desk.common.WorkingPane;
import walebook.drawing.CuttingPlanPicture;
import walebook.kit.ClothToBuy;
import walebook.kit.Kit;
import walebook.kit.KitLine;
import walebook.lesson.Plan;
import walebook.quantity.Show;
import walebook.record.Cloth;
import walebook.words.Words;
import walebook.working.Working;

/** The kit: for how many and of which cloths, the list to buy by, and the cutting plans. */
final class KitPane extends VBox {
  private static final int ROWS = 30;
  private static final double WHAT_EMS = 14;

  private final Words words;
  private final KitViewModel model;
  private final ScrapsViewModel scraps;
  private final VBox result = new VBox(16);

  KitPane(Words words, KitViewModel model, ScrapsViewModel scraps, List<Cloth> cloths) {
    super(16);
    this.words = words;
    this.model = model;
    this.scraps = scraps;
    FieldGroup whom =
        new FieldGroup(words.say("desk.lessons.kit.whom"))
            .add(typed(words.say("desk.lessons.kit.students"), "12", KitViewModel.STUDENTS), 9)
            .add(typed(words.say("desk.lessons.kit.spare"), "10", KitViewModel.SPARE), 9)
            .add(typed(words.say("desk.lessons.kit.margin"), "0", KitViewModel.MARGIN), 11);
    getChildren().add(whom);
    for (Plan.ClothSlot slot : model.pack().plan().cloths()) {
      getChildren().add(cloth(slot, cloths));
    }
    if (!model.pack().plan().cloths().isEmpty()) {
      getChildren().add(Texts.caption(words.say("desk.lessons.kit.from-card")));
    }
    FieldGroup prices = new FieldGroup(words.say("desk.lessons.kit.cost"));
    for (KitPriceFields.Price each : model.prices()) {
      String key = each.metre() ? "desk.lessons.kit.price-metre" : "desk.lessons.kit.price-each";
      prices.add(typed(words.say(key, each.what()), "0.50", each.field()), 24);
    }
    getChildren().add(prices.below(Texts.caption(words.say("desk.lessons.kit.prices-note"))));
    getChildren().add(result);
    model
        .kitProperty()
        .addListener(
            (from, old, now) -> {
              show(now);
              Platform.runLater(this::toResult);
            });
    show(model.kitProperty().get());
  }

  private TypedField typed(String label, String prompt, String field) {
    return new TypedField(words, label, prompt, model.field(field));
  }

  private FieldGroup cloth(Plan.ClothSlot slot, List<Cloth> cloths) {
    List<String> keys = new ArrayList<>(List.of(""));
    cloths.forEach(each -> keys.add(each.id().toString()));
    String asks = words.say("desk.lessons.take-up.slot", slot.slot(), slot.says());
    return new FieldGroup(asks)
        .titled(
            model
                .cloth(slot)
                .text()
                .map(key -> name(cloths, key))
                .map(name -> name.isEmpty() ? asks : name))
        .add(
            new PickedField(
                words,
                words.say("desk.lessons.kit.of-room"),
                keys,
                key -> name(cloths, key),
                model.cloth(slot)),
            16)
        .add(
            new TypedField(words, words.say("desk.lessons.kit.width"), "150 cm", model.width(slot)),
            11)
        .add(
            new TypedField(words, words.say("desk.lessons.kit.wash"), "-5/-3", model.wash(slot)),
            17)
        .add(typed(words.say("desk.lessons.kit.price-of-metre"), "8.50", model.priceOf(slot)), 11)
        .below(Texts.caption(words.say("desk.lessons.kit.stands-for", slot.slot(), slot.says())));
  }

  private static String name(List<Cloth> cloths, String key) {
    return cloths.stream()
        .filter(each -> each.id().toString().equals(key))
        .map(Cloth::name)
        .findFirst()
        .orElse("");
  }

  /** The list stands below the fields: it is scrolled to, so that nobody waits for it above. */
  private void toResult() {
    Parent up = getParent();
    while (up != null && !(up instanceof ScrollPane)) {
      up = up.getParent();
    }
    if (up instanceof ScrollPane scroll && !result.getChildren().isEmpty()) {
      scroll.applyCss();
      scroll.layout();
      Node all = scroll.getContent();
      double top = all.sceneToLocal(result.localToScene(0, 0)).getY();
      double room = all.getLayoutBounds().getHeight() - scroll.getViewportBounds().getHeight();
      scroll.setVvalue(room <= 0 ? 0 : Math.min(1, top / room));
    }
  }

  private void show(@Nullable Kit kit) {
    result.getChildren().clear();
    if (kit == null) {
      return;
    }
    result.getChildren().add(Texts.section(words.say("desk.lessons.kit.list", kit.students())));
    result.getChildren().add(table(kit));
    if (kit.unpriced() < kit.lines().size()) {
      String cost = Show.fixed(kit.cost(), 2);
      result.getChildren().add(Texts.text(words.say("desk.lessons.kit.sum", cost, kit.unpriced())));
    }
    kit.says().forEach(each -> result.getChildren().add(Texts.caption(words.say(each))));
    result.getChildren().add(paper());
    kit.cloths().forEach(each -> result.getChildren().add(plan(each)));
    Working worked = kit.thread();
    if (worked != null) {
      WorkingPane pane = new WorkingPane(words);
      pane.show(worked);
      result.getChildren().add(pane);
    }
    if (!kit.cuts().isEmpty()) {
      result.getChildren().add(new ScrapsPane(words, scraps));
    }
  }

  private FieldGroup paper() {
    Button print = new Button(words.say("desk.lessons.kit.print"));
    print.setOnAction(pressed -> model.print());
    return new FieldGroup(words.say("desk.lessons.kit.on-paper"))
        .below(
            new Segments<>(
                List.of("a4", "letter"),
                model.paperProperty(),
                key ->
                    words.say(
                        key.equals("a4") ? "desk.common.print.a4" : "desk.common.print.letter")))
        .below(print);
  }

  private ColumnTable<KitLine> table(Kit kit) {
    ColumnTable<KitLine> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.lessons.kit.list", kit.students()));
    TableColumn<KitLine, String> what =
        table.words(words.say("desk.lessons.kit.what"), WHAT_EMS, each -> words.say(each.what()));
    figures(table, "desk.lessons.kit.each", false);
    figures(table, "desk.lessons.kit.class", true);
    table.words(words.say("desk.lessons.kit.unit"), 5, each -> each.unit().sign());
    table.figures(
        words.say("desk.lessons.kit.price"),
        6,
        each -> number(each.cost()),
        each -> each.cost() == null ? "" : Show.fixed(number(each.cost()), 2));
    table.takesRest(what, WHAT_EMS);
    table.getItems().setAll(kit.lines());
    table.asHighAs(ROWS);
    return table;
  }

  private void figures(ColumnTable<KitLine> table, String title, boolean forClass) {
    table.figures(
        words.say(title),
        5,
        each -> number(forClass ? each.forClass() : each.perStudent()),
        each -> {
          double value = number(forClass ? each.forClass() : each.perStudent());
          return Double.isNaN(value) ? "" : Show.upTo(value, 2);
        });
  }

  private static double number(@Nullable Double value) {
    return value == null ? Double.NaN : value;
  }

  private VBox plan(ClothToBuy cloth) {
    PicturePane picture =
        new PicturePane(words, new CuttingPlanPicture(cloth.name(), cloth.plan(), model.shownIn()));
    picture.setMaxWidth(Region.USE_PREF_SIZE);
    WorkingPane working = new WorkingPane(words);
    working.show(cloth.working());
    Button save = new Button(words.say("desk.lessons.kit.save"));
    save.setAccessibleText(words.say("desk.lessons.kit.save-says", cloth.name()));
    save.setOnAction(pressed -> model.save(cloth));
    VBox card = new VBox(10, working, picture, save);
    card.getStyleClass().add("card");
    return card;
  }
}
