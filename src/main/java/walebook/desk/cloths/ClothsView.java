package walebook.desk.cloths;

import java.util.List;
import java.util.UUID;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TableColumn;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.act.cloth.ClothCard;
import walebook.act.cloth.ReadClothCard;
import walebook.act.cloth.StartReading;
import walebook.compare.ClothStretch;
import walebook.desk.common.AfterPause;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.EmptyState;
import walebook.desk.common.FormFields;
import walebook.desk.common.IntoView;
import walebook.desk.common.NotesPane;
import walebook.desk.common.NotesViewModel;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.SavesByKey;
import walebook.desk.common.Session;
import walebook.desk.common.Texts;
import walebook.quantity.Show;
import walebook.record.ClothWash;
import walebook.record.Grain;
import walebook.record.Note;
import walebook.words.Words;

/** The place of the cloths: the list, a card, its form, the form of a reading. */
public final class ClothsView extends BorderPane {
  private static final int ROWS = 14;
  private final Words words;
  private final ClothsViewModel model;
  private final Session session;
  private final ReadingFormViewModel reading;
  private final WashFormViewModel wash;
  private final NotesViewModel notes;
  private final NotesPane notesPane;

  /** Only what is in it changes while a card stays open, so that focus and scrolling stay. */
  private final VBox cardHolder = new VBox();

  private @Nullable UUID cardShown;

  public ClothsView(Session session) {
    this.words = session.words();
    this.model = new ClothsViewModel(session);
    this.session = session;
    this.reading = new ReadingFormViewModel(session);
    this.wash = new WashFormViewModel(session);
    this.notes = new NotesViewModel(session);
    this.notesPane = new NotesPane(words, notes);
    AfterPause.of(reading.kept().editsProperty(), reading.kept()::keep);
    AfterPause.of(wash.kept().editsProperty(), wash.kept()::keep);
    model.partProperty().addListener((from, old, now) -> show());
    model.cardProperty().addListener((from, old, now) -> cardChanged());
    model.loadedProperty().addListener((from, old, now) -> show());
    model.askedProperty().addListener((from, old, now) -> askedChanged());
    show();
  }

  /** Keeps what is being typed; called before the book is closed. */
  public void rest() {
    reading.kept().rest();
    wash.kept().rest();
    notes.rest();
  }

  private void cardChanged() {
    ClothCard card = model.cardProperty().get();
    if (card != null && card.cloth().id().equals(cardShown)) {
      cardHolder.getChildren().setAll(new ClothCardPane(words, card, model));
    } else if (model.partProperty().get() == ClothsViewModel.Part.CARD) {
      show();
    }
  }

  private void askedChanged() {
    if (model.partProperty().get() == ClothsViewModel.Part.READING) {
      show();
    }
  }

  private void show() {
    reading.kept().keep();
    wash.kept().keep();
    cardShown = null;
    setCenter(
        switch (model.partProperty().get()) {
          case LIST -> list();
          case CARD -> card();
          case FORM -> form();
          case READING -> reading();
          case WASH -> wash();
        });
  }

  private Node list() {
    PlaceFrame frame = new PlaceFrame(words, words.say("desk.cloths.title"));
    if (!model.loadedProperty().get()) {
      return frame.beingRead();
    }
    if (model.lines().isEmpty()) {
      return frame.work(
          new EmptyState(
              words.say("desk.cloths.empty"), words.say("desk.cloths.empty.begin"), model::add));
    }
    ColumnTable<ReadClothCard.Line> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.cloths.title"));
    table.wrapped(words.say("desk.cloths.col.name"), 12, this::name);
    stretch(table, "desk.cloths.col.wale", Grain.WALE);
    stretch(table, "desk.cloths.col.course", Grain.COURSE);
    table.figures(
        words.say("desk.cloths.col.mass"),
        5.8,
        line -> order(line.cloth().massGm2()),
        line -> shown(line.cloth().massGm2()));
    TableColumn<ReadClothCard.Line, String> fibre =
        table.words(words.say("desk.cloths.col.fibre"), 13, line -> line.cloth().fibre());
    table.figures(
        words.say("desk.cloths.col.readings"),
        7,
        line -> (double) line.readings(),
        line -> Integer.toString(line.readings()));
    table.figures(
        words.say("desk.cloths.col.pieces"),
        6.2,
        line -> (double) line.pieces(),
        line -> Integer.toString(line.pieces()));
    table.takesRest(fibre, 13);
    table.setItems(model.lines());
    table.asHighAs(ROWS);
    table.opens(line -> model.open(line.cloth().id()));
    Button add = new Button(words.say("desk.cloths.add"));
    add.setOnAction(pressed -> model.add());
    frame.notice().noticeProperty().bind(model.noticeProperty());
    return frame.work(table, Texts.caption(words.say("desk.cloths.list.note"))).primary(add);
  }

  private void stretch(ColumnTable<ReadClothCard.Line> table, String title, Grain grain) {
    table.figures(
        words.say(title),
        7.9,
        line -> order(percent(line, grain)),
        line -> shown(percent(line, grain)));
  }

  private String name(ReadClothCard.Line line) {
    String name = line.cloth().name();
    return line.cloth().retired() ? words.say("desk.cloths.retired", name) : name;
  }

  private Node card() {
    ClothCard card = model.cardProperty().get();
    if (card == null) {
      return list();
    }
    PlaceFrame frame = new PlaceFrame(words, card.cloth().name());
    Button edit = new Button(words.say("desk.cloths.edit"));
    edit.setOnAction(pressed -> model.edit());
    Button washed = new Button(words.say("desk.cloths.wash"));
    washed.setOnAction(pressed -> model.wash());
    Button measure = new Button(words.say("desk.cloths.measure"));
    measure.setOnAction(pressed -> model.measure());
    Button bin = new Button(words.say("desk.cloths.bin"));
    bin.setOnAction(pressed -> model.binCloth());
    frame.notice().noticeProperty().bind(model.noticeProperty());
    cardShown = card.cloth().id();
    cardHolder.getChildren().setAll(new ClothCardPane(words, card, model));
    notes.open(Note.About.CLOTH, card.cloth().id());
    return frame
        .context(back("desk.cloths.back-list"))
        .work(cardHolder, notesPane)
        .lesser(edit)
        .lesser(bin)
        .lesser(washed)
        .primary(measure);
  }

  private Node form() {
    ClothCard card = model.cardProperty().get();
    String title = card == null ? words.say("desk.cloths.new") : card.cloth().name();
    ClothFormViewModel form = new ClothFormViewModel(session, model::saved);
    form.begin(card == null ? null : card.cloth(), model.unit());
    PlaceFrame frame = new PlaceFrame(words, title);
    Button save = save(form.fields());
    save.setOnAction(pressed -> form.save());
    savedByKey(frame, form::save);
    ClothFormPane fields = new ClothFormPane(words, form, session, model.unit().sign());
    IntoView.onceShown(fields.first().field());
    return frame.context(back("desk.cloths.back-without")).work(fields).primary(save);
  }

  private Node reading() {
    ClothCard card = model.cardProperty().get();
    if (card == null) {
      return list();
    }
    StartReading.Asked asked = model.askedProperty().get();
    if (asked == null) {
      reading.begin(card.cloth().id(), card.unit());
    } else {
      reading.begin(asked, card.unit());
    }
    PlaceFrame frame =
        new PlaceFrame(words, words.say("desk.cloths.reading.title", card.cloth().name()));
    Button save = save(reading.fields());
    save.setOnAction(pressed -> reading.save());
    savedByKey(frame, reading::save);
    frame.notice().noticeProperty().bind(reading.noticeProperty());
    if (asked != null) {
      frame.lesser(next(reading));
    }
    return frame
        .context(asked == null ? back("desk.cloths.back-card") : today())
        .work(new ReadingFormPane(words, reading, card.unit()))
        .means(new ReadingMeaningPane(words, reading))
        .primary(save);
  }

  private Node wash() {
    ClothCard card = model.cardProperty().get();
    if (card == null) {
      return list();
    }
    List<ClothWash> before = card.washes();
    String last = before.isEmpty() ? "" : before.get(before.size() - 1).wash();
    wash.begin(card.cloth().id(), card.unit(), last);
    PlaceFrame frame =
        new PlaceFrame(words, words.say("desk.cloths.wash.title", card.cloth().name()));
    Button save = save(wash.fields());
    save.setOnAction(pressed -> wash.save());
    savedByKey(frame, wash::save);
    frame.notice().noticeProperty().bind(wash.noticeProperty());
    WashFormPane form = new WashFormPane(words, wash, card.unit());
    IntoView.onceShown(form.first().field());
    return frame
        .context(back("desk.cloths.back-card"))
        .work(form)
        .means(new WashMeaningPane(words, wash))
        .primary(save);
  }

  private static void savedByKey(Node frame, Runnable save) {
    SavesByKey.on(frame, save);
  }

  /** What the student is to measure after this, while there is any. */
  private Button next(ReadingFormViewModel reading) {
    Button next = new Button();
    next.textProperty().bind(reading.askedProperty().map(this::nextSays).orElse(""));
    next.visibleProperty().bind(next.textProperty().isNotEmpty());
    next.managedProperty().bind(next.visibleProperty());
    next.setOnAction(
        pressed -> {
          StartReading.Asked now = reading.askedProperty().get();
          if (now != null && now.next() != null) {
            model.measure(now.next().plannedId());
          }
        });
    return next;
  }

  private String nextSays(StartReading.Asked asked) {
    StartReading.Next next = asked.next();
    return next == null
        ? ""
        : words.say(
            "desk.cloths.reading.next",
            next.cloth(),
            words.say("common.choice." + next.grain().key()));
  }

  private Button today() {
    Button today = new Button(words.say("desk.cloths.reading.today"));
    today.getStyleClass().add("quiet");
    today.setOnAction(pressed -> model.toToday());
    return today;
  }

  private Button save(FormFields of) {
    Button save = new Button();
    save.textProperty()
        .bind(
            of.asksProperty()
                .map(now -> words.say(now ? "desk.common.save-anyway" : "desk.common.save")));
    return save;
  }

  private Button back(String key) {
    Button back = new Button(words.say(key));
    back.getStyleClass().add("quiet");
    back.setOnAction(pressed -> model.back());
    return back;
  }

  private static @Nullable Double percent(ReadClothCard.Line line, Grain grain) {
    ClothStretch known = line.stretches().get(grain);
    return known == null ? null : known.percent();
  }

  private static Double order(@Nullable Double value) {
    return value == null ? Double.NaN : value;
  }

  private static String shown(@Nullable Double value) {
    return value == null ? "–" : Show.fixed(value, 0);
  }
}
