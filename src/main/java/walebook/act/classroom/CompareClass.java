package walebook.act.classroom;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.ResultFilter;
import walebook.compare.CompareBySetting;
import walebook.compare.Comparison;
import walebook.compare.Factor;
import walebook.compare.LeaveOut;
import walebook.compare.Names;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;

/** Compares a class's pieces by setting. */
public final class CompareClass {
  private final Book book;

  public CompareClass(Book book) {
    this.book = book;
  }

  /**
   * What is asked.
   *
   * @param lessonId null for all lessons and pieces without one
   * @param clothId null for all cloths
   * @param factors what to tell pieces apart by; {@link CompareBySetting#USUAL} is the usual
   * @param namesHidden true to show students' aliases
   */
  public record Question(
      UUID classId,
      @Nullable UUID lessonId,
      @Nullable UUID clothId,
      List<Factor> factors,
      boolean namesHidden) {
    public Question {
      factors = List.copyOf(factors);
    }
  }

  /** Reads the pieces and compares them. */
  public Comparison compare(Question question) {
    ResultFilter filter =
        ResultFilter.ALL
            .ofClass(question.classId())
            .ofLesson(question.lessonId())
            .onCloth(question.clothId())
            .withFaults();
    List<ResultLine> lines = book.results().list(filter);
    Map<MarkedValue, Set<UUID>> setAside = new EnumMap<>(MarkedValue.class);
    for (MarkedValue each : MarkedValue.values()) {
      setAside.put(each, book.marks().setAside(each));
    }
    return CompareBySetting.ofLines(
        LeaveOut.of(lines, setAside),
        question.factors(),
        Stretches.of(book, lines),
        Names.of(book, question.namesHidden(), lines));
  }
}
