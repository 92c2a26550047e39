package walebook.act.bring;

import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import walebook.act.bring.match.BringField;
import walebook.act.bring.match.BringWhat;
import walebook.act.cloth.KeepCloth;
import walebook.book.Book;
import walebook.cloth.FabricKind;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.record.Cloth;
import walebook.words.Words;

/**
 * Cards of cloths. A cloth has one card, however many rows are about it: what the book calls by the
 * same name is there already, and its card stays as it is.
 */
final class ClothKind implements LogKind<Cloth> {
  private final Book book;
  private final KeepCloth form;
  private final Map<String, String> kinds = new HashMap<>();
  private final List<String> kindNames = new ArrayList<>();
  private final Map<String, String> yesOrNo;

  ClothKind(Book book, Clock clock, List<FabricKind> kinds, Words words) {
    this.book = book;
    this.form = new KeepCloth(book, clock);
    for (FabricKind each : kinds) {
      this.kinds.put(plain(each.name()), each.key());
      this.kinds.put(plain(each.key()), each.key());
      kindNames.add(each.name());
    }
    this.yesOrNo = Map.of(plain(words.say("sheet.yes")), "yes", plain(words.say("sheet.no")), "no");
  }

  private static String plain(String text) {
    return text.strip().replace('-', ' ').toLowerCase(Locale.ROOT);
  }

  @Override
  public String about(CellReader cells) {
    return cells.text(BringField.CLOTH_NAME);
  }

  @Override
  public boolean isOneForAllAlike() {
    return true;
  }

  @Override
  public Answer<Cloth> read(CellReader cells) {
    String name = PieceTable.plain(cells.text(BringField.CLOTH_NAME));
    for (Cloth each : book.cloths().all()) {
      if (PieceTable.plain(each.name()).equals(name)) {
        return Answer.good(each);
      }
    }
    Map<String, String> typed = new HashMap<>();
    for (BringField each : BringField.of(BringWhat.CLOTHS)) {
      String text = cells.text(each.key());
      typed.put(each.key(), yesOrNo.getOrDefault(plain(text), text));
    }
    typed.put(BringField.CLOTH_KIND, kind(cells));
    return form.read(null, typed);
  }

  /** The key of the kind that a cell names; what nobody knows is refused. */
  private String kind(CellReader cells) {
    String text = cells.text(BringField.CLOTH_KIND);
    String key = text.isEmpty() ? "" : kinds.get(plain(text));
    if (key == null) {
      cells
          .problems()
          .add(
              Problem.refuse(
                  "choice.unknown",
                  cells.place(BringField.CLOTH_KIND),
                  text,
                  String.join("; ", kindNames)));
      return "";
    }
    return key;
  }

  @Override
  public List<Cloth> there() {
    return book.cloths().all();
  }

  @Override
  public Object likeness(Cloth found) {
    return PieceTable.plain(found.name());
  }

  @Override
  public void save(Cloth found) {
    book.cloths().add(found);
  }
}
