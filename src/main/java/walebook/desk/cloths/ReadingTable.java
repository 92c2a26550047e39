package walebook.desk.cloths;

import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.layout.BorderPane;
import org.jspecify.annotations.Nullable;
import walebook.act.cloth.ClothCard;
import walebook.act.cloth.GrainSummary;
import walebook.desk.common.ColumnTable;
import walebook.quantity.Show;
import walebook.record.ClothReading;
import walebook.record.Keyed;
import walebook.words.Words;

/** A cloth's readings, newest first. */
final class ReadingTable extends BorderPane {
  private static final int ROWS = 8;
  private static final double LENGTH_EMS = 6.9;
  private static final double PERCENT_EMS = 6.5;
  private static final double BY_EMS = 8;

  private final Words words;
  private final ClothCard card;

  ReadingTable(Words words, ClothCard card, ClothsViewModel model) {
    this.words = words;
    this.card = card;
    ColumnTable<ClothReading> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.cloths.readings"));
    String unit = card.unit().sign();
    double in = card.unit().inBase();
    table.wrapped(
        words.say("desk.cloths.col.grain"),
        7.6,
        row -> words.say("desk.today.grain." + row.grain().key()));
    length(table, words.say("desk.cloths.col.gauge", unit), in, ClothReading::gaugeMm);
    length(table, words.say("desk.cloths.col.stretched", unit), in, ClothReading::stretchedMm);
    table.figures(
        words.say("desk.cloths.col.stretch"),
        PERCENT_EMS,
        ClothReading::stretchPercent,
        row -> Show.fixed(row.stretchPercent(), 1));
    percent(table, "desk.cloths.col.growth", GrainSummary::growthOf);
    percent(table, "desk.cloths.col.recovery", GrainSummary::recoveryOf);
    table.wrapped(words.say("desk.cloths.col.how"), 11, this::how);
    table.days(words.say("desk.cloths.col.on"), 7.6, ClothReading::measuredOn);
    table.takesRest(
        table.words(
            words.say("desk.cloths.col.by"),
            BY_EMS,
            row -> row.measuredBy() == null ? "" : card.names().of(row.measuredBy())),
        BY_EMS);
    table.getItems().setAll(card.readings());
    table.asHighAs(ROWS);
    setCenter(table);
    Button bin = new Button(words.say("desk.cloths.bin-reading"));
    bin.getStyleClass().add("quiet");
    bin.disableProperty().bind(Bindings.isNull(table.getSelectionModel().selectedItemProperty()));
    bin.setOnAction(
        pressed -> {
          ClothReading chosen = table.getSelectionModel().getSelectedItem();
          if (chosen != null) {
            model.binReading(chosen.id());
          }
        });
    setBottom(bin);
  }

  private static void length(
      ColumnTable<ClothReading> table,
      String title,
      double in,
      java.util.function.ToDoubleFunction<ClothReading> mm) {
    table.figures(
        title,
        LENGTH_EMS,
        row -> mm.applyAsDouble(row),
        row -> Show.upTo(mm.applyAsDouble(row) / in, 2));
  }

  private void percent(
      ColumnTable<ClothReading> table,
      String title,
      java.util.function.Function<ClothReading, @Nullable Double> value) {
    table.figures(
        words.say(title),
        PERCENT_EMS,
        row -> {
          Double percent = value.apply(row);
          return percent == null ? Double.NaN : percent;
        },
        row -> {
          Double percent = value.apply(row);
          return percent == null ? "–" : Show.fixed(percent, 1);
        });
  }

  private String how(ClothReading row) {
    Keyed pull = row.how().pull();
    Keyed fold = row.how().fold();
    String first = pull == null ? "–" : choice(pull);
    String how = fold == null ? first : words.say("desk.cloths.how", first, choice(fold));
    return card.isAside(row) ? words.say("desk.cloths.how-aside", how) : how;
  }

  private String choice(Keyed each) {
    return words.say("common.choice." + each.key());
  }
}
