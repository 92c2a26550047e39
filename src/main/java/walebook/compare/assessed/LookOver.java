package walebook.compare.assessed;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Assessments;
import walebook.book.Book;
import walebook.record.CheckedBy;
import walebook.record.CriterionTag;
import walebook.record.DoneLine;
import walebook.record.Feedback;
import walebook.record.PieceCheck;

/** What was asked of a class's pieces and said of them, to look at the pieces one by one. */
public final class LookOver {
  private final Tags tags;
  private final Map<UUID, PieceCheck> self = new HashMap<>();
  private final Map<UUID, PieceCheck> tutor = new HashMap<>();
  private final Map<UUID, Long> comments;
  private final boolean nothing;

  private LookOver(Assessments all, UUID classId) {
    tags = Tags.of(all.tagsOf(classId));
    for (PieceCheck each : all.checksOf(classId)) {
      (each.by() == CheckedBy.SELF ? self : tutor).put(each.pieceId(), each);
    }
    comments =
        all.feedbackOf(classId).stream()
            .collect(Collectors.groupingBy(Feedback::pieceId, Collectors.counting()));
    nothing = tags.isEmpty() && self.isEmpty() && tutor.isEmpty() && comments.isEmpty();
  }

  /** Reads it from the book. */
  public static LookOver of(Book book, UUID classId) {
    return new LookOver(book.assessments(), classId);
  }

  /** A piece of the class as an assessor sees it; null when it doesn't concern them. */
  public @Nullable AssessedPiece at(DoneLine line) {
    if (nothing) {
      return null;
    }
    AssessedPiece piece =
        new AssessedPiece(
            line.pieceId(),
            line.code(),
            line.studentId(),
            line.lessonId(),
            line.sewnOn(),
            tags.of(line),
            self.get(line.pieceId()),
            tutor.get(line.pieceId()),
            comments.getOrDefault(line.pieceId(), 0L).intValue());
    return piece.criteria().isEmpty() && !piece.isLookedOver() ? null : piece;
  }

  /** Criteria by the piece and by the lesson that they are on. */
  private record Tags(Map<UUID, Set<UUID>> byPiece, Map<UUID, Set<UUID>> byLesson) {
    static Tags of(List<CriterionTag> tags) {
      Map<UUID, Set<UUID>> byPiece = new HashMap<>();
      Map<UUID, Set<UUID>> byLesson = new HashMap<>();
      for (CriterionTag each : tags) {
        UUID piece = each.pieceId();
        UUID lesson = each.lessonId();
        if (piece != null) {
          byPiece.computeIfAbsent(piece, key -> new HashSet<>()).add(each.criterionId());
        } else if (lesson != null) {
          byLesson.computeIfAbsent(lesson, key -> new HashSet<>()).add(each.criterionId());
        }
      }
      byLesson.replaceAll((lesson, criteria) -> Set.copyOf(criteria));
      return new Tags(byPiece, byLesson);
    }

    boolean isEmpty() {
      return byPiece.isEmpty() && byLesson.isEmpty();
    }

    /** Most pieces have none of their own and share their lesson's. */
    Set<UUID> of(DoneLine line) {
      UUID lesson = line.lessonId();
      Set<UUID> shared = lesson == null ? Set.of() : byLesson.getOrDefault(lesson, Set.of());
      Set<UUID> own = byPiece.get(line.pieceId());
      if (own == null) {
        return shared;
      }
      Set<UUID> found = new HashSet<>(own);
      found.addAll(shared);
      return found;
    }
  }
}
