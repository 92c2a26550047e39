package walebook.sheet;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.compare.ClothStretch;
import walebook.compare.Names;
import walebook.compare.PieceResult;
import walebook.record.ClothUse;
import walebook.record.Grain;
import walebook.record.PlannedPiece;
import walebook.record.TestPiece;

/**
 * What the row of a piece needs beside the piece.
 *
 * @param names of students (or their aliases), cloths and machines
 * @param lessons titles by lesson
 * @param codes of pieces by key, also of parents in other classes
 * @param faults plain names by key
 * @param zone in which times of logging are told
 */
public record PieceLookup(
    Names names,
    Map<UUID, String> lessons,
    Map<UUID, PlannedPiece> planned,
    Map<UUID, String> codes,
    Map<UUID, Map<Grain, ClothStretch>> stretches,
    Map<String, String> faults,
    ZoneId zone) {
  public PieceLookup {
    lessons = Map.copyOf(lessons);
    planned = Map.copyOf(planned);
    codes = Map.copyOf(codes);
    stretches = Map.copyOf(stretches);
    faults = Map.copyOf(faults);
  }

  @Nullable String lesson(TestPiece piece) {
    UUID id = piece.whose().lessonId();
    return id == null ? null : lessons.get(id);
  }

  @Nullable PlannedPiece plan(TestPiece piece) {
    UUID id = piece.whose().plannedId();
    return id == null ? null : planned.get(id);
  }

  @Nullable String name(@Nullable UUID id) {
    return id == null ? null : names.of(id);
  }

  @Nullable ClothStretch stretch(TestPiece piece) {
    ClothUse use = piece.cloth();
    return stretches.getOrDefault(use.clothId(), Map.of()).get(use.grain());
  }

  PieceResult result(TestPiece piece) {
    return PieceResult.of(piece, stretch(piece));
  }

  LocalDateTime local(Instant time) {
    return LocalDateTime.ofInstant(time, zone).withNano(0);
  }
}
