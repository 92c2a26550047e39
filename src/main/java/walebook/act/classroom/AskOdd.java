package walebook.act.classroom;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.compare.FairQuestion;
import walebook.compare.Names;
import walebook.compare.alike.MeasureAlike;
import walebook.compare.odd.FindOdd;
import walebook.compare.odd.OddReading;
import walebook.record.ClothReading;
import walebook.record.ResultLine;

/** Asks which of a class's values deserve a second look. */
public final class AskOdd {
  private final Book book;

  public AskOdd(Book book) {
    this.book = book;
  }

  /** Odd values of pieces and readings, those not looked at yet first, the oddest first. */
  public List<OddReading> ask(CompareFair.Which which) {
    List<ResultLine> lines = book.results().list(which.filter());
    Names names = Names.of(book, which.namesHidden());
    List<ClothReading> readings =
        book.clothLog().allReadings().stream()
            .filter(each -> isAsked(which, each.classId(), each.lessonId(), each.clothId()))
            .toList();
    MeasureAlike alike = MeasureAlike.of(readings, names, Set.of(), FairQuestion.USUAL_CONFIDENCE);
    return FindOdd.of(lines, alike, names, book.marks().all());
  }

  private static boolean isAsked(
      CompareFair.Which which, @Nullable UUID inClass, @Nullable UUID lesson, UUID cloth) {
    return (which.classIds().isEmpty() || (inClass != null && which.classIds().contains(inClass)))
        && (which.lessonId() == null || which.lessonId().equals(lesson))
        && (which.clothId() == null || which.clothId().equals(cloth));
  }
}
