package walebook.act.classroom;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.compare.FairQuestion;
import walebook.compare.Names;
import walebook.compare.alike.MeasureAlike;
import walebook.compare.odd.FindOdd;
import walebook.compare.odd.OddLots;
import walebook.compare.odd.OddReading;
import walebook.record.ClothReading;
import walebook.record.ResultLine;
import walebook.record.ValueMark;

/** Asks which of a class's values deserve a second look. */
public final class AskOdd {
  private final Book book;

  public AskOdd(Book book) {
    this.book = book;
  }

  /**
   * Odd values of pieces and readings, those not looked at yet first, the oddest first. A piece is
   * held against all that its class sewed alike, in whatever lesson; a reading against those of its
   * cloth in its lesson: the same value is odd or not, whatever is asked.
   */
  public List<OddReading> ask(CompareFair.Which which) {
    List<ResultLine> lines = book.results().list(which.filter());
    Names names = Names.of(book, which.namesHidden());
    List<ClothReading> readings =
        book.clothLog().allReadings().stream()
            .filter(each -> isAsked(which, each.classId(), each.clothId()))
            .toList();
    Set<UUID> asked =
        readings.stream()
            .filter(each -> which.lessonId() == null || which.lessonId().equals(each.lessonId()))
            .map(ClothReading::id)
            .collect(Collectors.toUnmodifiableSet());
    MeasureAlike alike = MeasureAlike.of(readings, names, Set.of(), FairQuestion.USUAL_CONFIDENCE);
    List<ValueMark> marks = book.marks().all();
    OddLots lots = OddLots.of(whole(book, which, lines), names, marks);
    return FindOdd.of(lines, lots, alike, names, marks).stream()
        .filter(each -> !each.value().isOfCloth() || asked.contains(each.targetId()))
        .toList();
  }

  /** All that the classes sewed on the cloths asked about, in whatever lesson. */
  static List<ResultLine> whole(Book book, CompareFair.Which which, List<ResultLine> asked) {
    return which.lessonId() == null ? asked : book.results().list(which.filter().ofLesson(null));
  }

  private static boolean isAsked(CompareFair.Which which, @Nullable UUID inClass, UUID cloth) {
    return (which.classIds().isEmpty() || (inClass != null && which.classIds().contains(inClass)))
        && (which.clothId() == null || which.clothId().equals(cloth));
  }
}
