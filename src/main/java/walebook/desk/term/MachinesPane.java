package walebook.desk.term;

import java.util.List;
import java.util.stream.Collectors;
import javafx.beans.Observable;
import javafx.scene.layout.VBox;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.EmptyState;
import walebook.desk.common.Texts;
import walebook.record.Machine;
import walebook.seam.StitchType;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** The machines in the room. */
final class MachinesPane extends VBox {
  private static final int ROWS = 14;

  private final Words words;
  private final MachinesViewModel model;
  private final SharedTables tables;

  MachinesPane(Words words, MachinesViewModel model, SharedTables tables) {
    super(8);
    this.words = words;
    this.model = model;
    this.tables = tables;
    model.machines().addListener((Observable change) -> show());
    show();
  }

  private void show() {
    if (model.machines().isEmpty()) {
      getChildren()
          .setAll(
              new EmptyState(
                  words.say("desk.term.machines.empty"),
                  words.say("desk.term.machines.begin"),
                  () -> model.open(null)));
      return;
    }
    ColumnTable<Machine> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.term.machines"));
    table.figures(
        words.say("desk.term.col.number"),
        5,
        each -> (double) each.number(),
        each -> Integer.toString(each.number()));
    table.wrapped(words.say("desk.term.col.machine"), 14, this::name);
    table.words(
        words.say("desk.term.col.kind"),
        10,
        each -> words.say("common.choice." + each.kind().key()));
    table.wrapped(words.say("desk.term.col.stitches"), 30, this::stitches);
    table.figures(
        words.say("desk.term.col.dials"),
        8,
        each -> (double) each.dials().size(),
        each -> Integer.toString(each.dials().size()));
    table.getItems().setAll(model.machines());
    table.asHighAs(ROWS);
    table.opens(model::open);
    getChildren().setAll(table, Texts.caption(words.say("desk.term.machines.note")));
  }

  private String name(Machine machine) {
    return machine.retired()
        ? words.say("desk.term.machines.retired", machine.name())
        : machine.name();
  }

  private String stitches(Machine machine) {
    List<String> keys = machine.stitches();
    return tables.stitchTypes().stream()
        .filter(each -> keys.contains(each.key()))
        .map(StitchType::name)
        .collect(Collectors.joining(", "));
  }
}
