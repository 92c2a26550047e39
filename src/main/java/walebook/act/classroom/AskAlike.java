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
import walebook.record.ClothReading;
import walebook.record.Mark;
import walebook.record.MarkedValue;
import walebook.record.ValueMark;

/** Asks whether a class measures alike. */
public final class AskAlike {
  private final Book book;

  public AskAlike(Book book) {
    this.book = book;
  }

  /**
   * Reads the readings and sorts them into studies.
   *
   * @param classId null for every class of the book
   * @param lessonId null for all lessons and readings without one
   * @param clothId null for all cloths
   * @param namesHidden true to show students' aliases
   */
  public MeasureAlike ask(
      @Nullable UUID classId,
      @Nullable UUID lessonId,
      @Nullable UUID clothId,
      boolean namesHidden) {
    List<ClothReading> all =
        clothId == null ? book.clothLog().allReadings() : book.clothLog().readingsOf(clothId);
    List<ClothReading> asked =
        all.stream()
            .filter(each -> classId == null || classId.equals(each.classId()))
            .filter(each -> lessonId == null || lessonId.equals(each.lessonId()))
            .toList();
    return MeasureAlike.of(
        asked,
        Names.of(book, namesHidden),
        book.marks().setAside(MarkedValue.CLOTH_STRETCH),
        lookedAt(),
        FairQuestion.USUAL_CONFIDENCE);
  }

  private Set<UUID> lookedAt() {
    return book.marks().all().stream()
        .filter(each -> each.value() == MarkedValue.CLOTH_STRETCH)
        .filter(each -> each.mark() != Mark.MISTYPED)
        .map(ValueMark::targetId)
        .collect(Collectors.toUnmodifiableSet());
  }
}
