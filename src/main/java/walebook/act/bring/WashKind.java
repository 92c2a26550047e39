package walebook.act.bring;

import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import walebook.act.bring.match.BringField;
import walebook.act.bring.match.BringWhat;
import walebook.act.cloth.LogWash;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.problem.Answer;
import walebook.record.Cloth;
import walebook.record.ClothWash;

/** Washes of cloths, one grain a row. */
final class WashKind implements LogKind<ClothWash> {
  private final Book book;
  private final LogTable table;
  private final ChoiceText choices;
  private final LogWash form;

  WashKind(Book book, Clock clock, LogTable table, ChoiceText choices) {
    this.book = book;
    this.table = table;
    this.choices = choices;
    this.form = new LogWash(book, clock);
  }

  @Override
  public String about(CellReader cells) {
    return cells.text(BringField.CLOTH);
  }

  @Override
  public Answer<ClothWash> read(CellReader cells) {
    Map<String, String> typed = new HashMap<>();
    for (BringField each : BringField.of(BringWhat.WASHES)) {
      typed.put(each.key(), choices.key(each.key(), cells.text(each.key())));
    }
    UUID cloth = table.cloth(cells, BringField.CLOTH);
    return form.read(cloth == null ? Ids.next() : cloth, typed).map(washes -> washes.get(0));
  }

  @Override
  public List<ClothWash> there() {
    List<ClothWash> all = new ArrayList<>();
    for (Cloth each : book.cloths().all()) {
      all.addAll(book.clothLog().washesOf(each.id()));
    }
    return all;
  }

  @Override
  public Object likeness(ClothWash found) {
    return List.of(
        found.clothId(),
        found.grain(),
        found.beforeMm(),
        found.afterMm(),
        table.covered(found.wash()),
        found.washedOn());
  }

  @Override
  public void save(ClothWash found) {
    book.clothLog().add(found);
  }
}
