package walebook.desk.classroom;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.AskKnown;
import walebook.act.classroom.CompareFair;
import walebook.book.Book;
import walebook.book.BookFiles;
import walebook.compare.FairComparison;
import walebook.compare.FairQuestion;
import walebook.compare.known.KnownFindings;
import walebook.compare.known.KnownSoFar;
import walebook.desk.common.PickFile;
import walebook.drawing.DotPlot;
import walebook.record.Cloth;
import walebook.statistics.Proportion;
import walebook.words.Words;

/** The same question over all classes and terms of the book. */
public final class TermsViewModel extends AskingModel<TermsViewModel.Known> {
  /** Every stitch. */
  static final String ANY = "";

  private final BookFiles files;
  private final ObservableList<Path> others = FXCollections.observableArrayList();
  private final ObservableList<String> stitches = FXCollections.observableArrayList(ANY);
  private final ObjectProperty<String> stitch = new SimpleObjectProperty<>(this, "stitch", ANY);
  private boolean filling;

  /**
   * What is known so far.
   *
   * @param stitches that were sewn, to choose from
   * @param troubles why other books could not be read
   * @param plot all classes together, by setting; null when no piece has a value
   */
  record Known(
      List<String> stitches,
      List<String> troubles,
      List<String> says,
      List<Line> lines,
      @Nullable DotPlot plot) {}

  private record Asked(
      FairQuestion question,
      @Nullable UUID clothId,
      @Nullable String stitch,
      boolean namesHidden) {}

  /** One class of the table. */
  record Line(
      String book,
      String term,
      String className,
      int pieces,
      int students,
      int setAside,
      String mean,
      String half,
      String held) {}

  /**
   * Over a place's filters.
   *
   * @param files opens other books, for as long as they are read
   */
  public TermsViewModel(FiltersViewModel filters, BookFiles files) {
    super(filters);
    this.files = files;
    foundProperty().addListener((from, old, now) -> fill(now));
    stitch.addListener(
        (from, old, now) -> {
          if (!filling) {
            asking().again();
          }
        });
  }

  @Override
  Asking.Work<Known> ask(CompareFair.Which which) {
    FairQuestion question = question();
    String named = stitch.get();
    String one = named == null || named.equals(ANY) ? null : named;
    Asked asked = new Asked(question, which.clothId(), one, which.namesHidden());
    List<Path> also = List.copyOf(others);
    Book book = session().book();
    Clock clock = session().clock();
    Words words = words();
    return progress -> {
      try (OtherBooks open = OtherBooks.open(files, also, clock)) {
        return known(book, open, asked, words, () -> progress.at(1.0 / 2));
      }
    };
  }

  /** What is asked: machines are no filter of this part, so none set in another is obeyed. */
  FairQuestion question() {
    return filters().question().withinMachines(false);
  }

  /** Books that are asked too, besides the one in hand. */
  ObservableList<Path> others() {
    return others;
  }

  /** Stitches to choose from, {@link #ANY} first. */
  ObservableList<String> stitches() {
    return stitches;
  }

  ObjectProperty<String> stitchProperty() {
    return stitch;
  }

  private void fill(@Nullable Known now) {
    filling = true;
    String was = stitch.get();
    List<String> all = new ArrayList<>(List.of(ANY));
    all.addAll(now == null ? List.of() : now.stitches());
    if (now != null && was != null && !all.contains(was)) {
      // What was found is of this stitch, though nothing asked about was sewn with it.
      all.add(was);
    }
    if (!stitches.equals(all)) {
      stitches.setAll(all);
    }
    stitch.set(all.contains(was) ? was : ANY);
    filling = false;
  }

  /** Asks for a book's file and asks that book too. */
  void alsoAsk() {
    Path file = session().files().open(PickFile.Kind.BOOK);
    if (file != null && !others.contains(file)) {
      others.add(file);
      asking().again();
    }
  }

  /** Asks a book no more. */
  void leaveOut(Path file) {
    if (others.remove(file)) {
      asking().again();
    }
  }

  private static Known known(Book book, OtherBooks open, Asked asked, Words words, Runnable goOn) {
    Cloth cloth = asked.clothId() == null ? null : book.cloths().find(asked.clothId());
    String clothName = cloth == null ? null : cloth.name();
    List<Book> books = new ArrayList<>(List.of(book));
    books.addAll(open.books());
    AskKnown act = new AskKnown(books, goOn);
    KnownSoFar found =
        act.ask(
            new AskKnown.Which(clothName, asked.stitch(), asked.namesHidden()), asked.question());
    FairComparison together = found.together();
    FairDrawn drawn = new FairDrawn(words);
    List<String> says =
        KnownFindings.of(
                found,
                levels -> drawn.setting(together.factors(), levels),
                grain -> words.say("act.class.grain." + grain.key()))
            .stream()
            .map(words::say)
            .toList();
    return new Known(
        act.stitches(clothName),
        open.troubles().stream().map(words::say).toList(),
        says,
        found.classes().stream().map(TermsViewModel::line).toList(),
        drawn.plot(together));
  }

  private static Line line(KnownSoFar.ClassLine each) {
    Proportion held = each.held();
    return new Line(
        each.book(),
        each.term(),
        each.className(),
        each.pieces(),
        each.students(),
        each.setAside(),
        each.mean() == null ? "–" : FairViewModel.number(each.mean().mean()),
        FairViewModel.number(each.median()),
        held == null ? "–" : held.count() + " / " + held.n());
  }
}
