package walebook.sheet;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import walebook.compare.ClothStretch;
import walebook.compare.Names;
import walebook.compare.PieceResult;
import walebook.compare.odd.OddReading;
import walebook.record.ClothUse;
import walebook.record.Grain;
import walebook.record.PlannedPiece;
import walebook.record.ResultLine;
import walebook.record.TestPiece;

/**
 * What the row of a piece needs beside the piece.
 *
 * @param names of students (or their aliases), cloths and machines
 * @param lessons titles by lesson
 * @param codes of pieces by key, also of parents in other classes
 * @param odd what of a piece deserves a second look
 * @param faults plain names by key
 * @param zone in which times of logging are told
 */
public record PieceLookup(
    Names names,
    Map<UUID, String> lessons,
    Map<UUID, PlannedPiece> planned,
    Function<UUID, @Nullable String> codes,
    Map<UUID, Map<Grain, ClothStretch>> stretches,
    Function<ResultLine, List<OddReading>> odd,
    Map<String, String> faults,
    ZoneId zone) {
  /** For those who ask what columns there are rather than what is in them. */
  public static final PieceLookup NONE =
      new PieceLookup(
          Names.given(Map.of()),
          Map.of(),
          Map.of(),
          id -> null,
          Map.of(),
          piece -> List.of(),
          Map.of(),
          ZoneOffset.UTC);

  public PieceLookup {
    lessons = Map.copyOf(lessons);
    planned = Map.copyOf(planned);
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

  List<OddReading> oddOf(TestPiece piece) {
    return odd.apply(ResultLine.of(piece));
  }

  PieceResult result(TestPiece piece) {
    return PieceResult.of(piece, stretch(piece));
  }

  LocalDateTime local(Instant time) {
    return LocalDateTime.ofInstant(time, zone).withNano(0);
  }
}
