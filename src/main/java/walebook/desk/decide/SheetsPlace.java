package walebook.desk.decide;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TableColumn;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.EmptyState;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.SavePicture;
import walebook.desk.common.SavesByKey;
import walebook.desk.common.Session;
import walebook.quantity.Unit;
import walebook.words.Words;

/** Builds the screens of garment sheets: the list, and one sheet with its answers. */
final class SheetsPlace {
  private static final int ROWS = 14;
  private static final double CLOTH_EMS = 12;

  private final Session session;
  private final Words words;
  private final SheetsViewModel model;
  private final Unit lengths;

  SheetsPlace(Session session, SheetsViewModel model, Unit lengths) {
    this.session = session;
    this.words = session.words();
    this.model = model;
    this.lengths = lengths;
  }

  Node list(Node... context) {
    PlaceFrame frame = new PlaceFrame(words, words.say("desk.decide.title")).context(context);
    if (!model.loadedProperty().get()) {
      return frame.beingRead();
    }
    if (model.lines().isEmpty()) {
      return frame.work(
          new EmptyState(
              words.say("desk.decide.sheets.empty"),
              words.say("desk.decide.sheets.begin"),
              model::add));
    }
    ColumnTable<SheetsViewModel.Line> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.decide.sheets"));
    table.wrapped(words.say("desk.decide.col.name"), 16, line -> line.sheet().name());
    table.wrapped(words.say("desk.decide.col.kind"), 10, SheetsViewModel.Line::kind);
    table.wrapped(words.say("desk.decide.col.whose"), 12, SheetsViewModel.Line::whose);
    TableColumn<SheetsViewModel.Line, String> cloth =
        table.words(words.say("desk.decide.col.cloth"), CLOTH_EMS, SheetsViewModel.Line::cloth);
    table.takesRest(cloth, CLOTH_EMS);
    table.setItems(model.lines());
    table.asHighAs(ROWS);
    table.opens(line -> model.open(line.sheet()));
    Button add = new Button(words.say("desk.decide.sheets.begin"));
    add.setOnAction(pressed -> model.add());
    frame.notice().noticeProperty().bind(model.noticeProperty());
    return frame.work(table).primary(add);
  }

  Node sheet(SheetViewModel sheet) {
    PlaceFrame frame = new PlaceFrame(words, words.say("desk.decide.sheet.title"));
    Button back = new Button(words.say("desk.decide.sheet.back"));
    back.getStyleClass().add("quiet");
    back.setOnAction(pressed -> model.close());
    Button save = new Button(words.say("desk.common.save"));
    save.setOnAction(pressed -> sheet.save());
    Button compare = new Button(words.say("desk.decide.compare"));
    compare.setOnAction(pressed -> model.compare());
    Button discard = new Button(words.say("desk.decide.discard"));
    discard.getStyleClass().add("quiet");
    discard.setOnAction(pressed -> sheet.discard());
    Button print = new Button(words.say("desk.decide.sheet.print"));
    PrintSheetViewModel printing = new PrintSheetViewModel(session, sheet);
    print.setOnAction(pressed -> printing.print());
    print.disableProperty().bind(printing.printingProperty());
    Button bin = new Button(words.say("desk.common.bin.go"));
    bin.getStyleClass().add("quiet");
    bin.setOnAction(pressed -> model.bin());
    frame.notice().noticeProperty().bind(sheet.noticeProperty());
    PicturesViewModel pictures = new PicturesViewModel(words, lengths, sheet.answersProperty());
    SavesByKey.on(frame, sheet::save);
    SavePicture picture = new SavePicture(session, sheet::tell);
    return frame
        .context(back)
        .work(new SheetPane(session, sheet, model.cloths(), lengths))
        .means(
            new SheetMeaningPane(
                words, new AnswersPane(words, sheet), new PicturesPane(words, pictures, picture)))
        .lesser(print)
        .lesser(compare)
        .lesser(discard)
        .lesser(bin)
        .primary(save);
  }

  Node compare(CompareViewModel comparing) {
    Button back = new Button(words.say("desk.decide.compare.back"));
    back.getStyleClass().add("quiet");
    back.setOnAction(pressed -> model.stopComparing());
    Button take = new Button(words.say("desk.decide.compare.take"));
    take.setOnAction(pressed -> model.take());
    return new PlaceFrame(words, words.say("desk.decide.compare.title"))
        .context(back)
        .work(new ComparePane(session, comparing, model.cloths(), lengths))
        .primary(take);
  }

  /** Which of the two the place shows. */
  enum Part {
    SHEETS("desk.decide.sheets"),
    CHECKS("desk.decide.checks");

    private final String sayKey;

    Part(String sayKey) {
      this.sayKey = sayKey;
    }

    String sayKey() {
      return sayKey;
    }
  }

  static ObjectProperty<Part> part() {
    return new SimpleObjectProperty<>(Part.SHEETS);
  }
}
