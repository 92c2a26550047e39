package walebook.book;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Whose results are wanted; null and empty mean all.
 *
 * @param faults true to look up each piece's worst fault too
 */
public record ResultFilter(
    List<UUID> classIds,
    @Nullable UUID lessonId,
    @Nullable UUID studentId,
    @Nullable UUID clothId,
    boolean faults) {
  public static final ResultFilter ALL = new ResultFilter(List.of(), null, null, null, false);

  public ResultFilter {
    classIds = List.copyOf(classIds);
  }

  public ResultFilter ofClass(UUID id) {
    return ofClasses(List.of(id));
  }

  public ResultFilter ofClasses(List<UUID> ids) {
    return new ResultFilter(ids, lessonId, studentId, clothId, faults);
  }

  public ResultFilter ofLesson(@Nullable UUID id) {
    return new ResultFilter(classIds, id, studentId, clothId, faults);
  }

  public ResultFilter ofStudent(@Nullable UUID id) {
    return new ResultFilter(classIds, lessonId, id, clothId, faults);
  }

  public ResultFilter onCloth(@Nullable UUID id) {
    return new ResultFilter(classIds, lessonId, studentId, id, faults);
  }

  public ResultFilter withFaults() {
    return new ResultFilter(classIds, lessonId, studentId, clothId, true);
  }
}
