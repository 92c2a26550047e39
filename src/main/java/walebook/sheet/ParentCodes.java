package walebook.sheet;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.record.Parent;
import walebook.record.TestPiece;

/** Codes of the pieces that others follow, also of those of another class: a few at a time. */
final class ParentCodes implements Function<UUID, @Nullable String> {
  private final Book book;
  private volatile Map<UUID, String> ready = Map.of();

  ParentCodes(Book book) {
    this.book = book;
  }

  /** Looks up in one go what rows of these pieces will ask for. */
  void prepare(List<TestPiece> pieces) {
    Set<UUID> parents =
        pieces.stream()
            .map(TestPiece::parent)
            .filter(Objects::nonNull)
            .map(Parent::pieceId)
            .collect(Collectors.toSet());
    ready = parents.isEmpty() ? Map.of() : Map.copyOf(book.pieces().codes(parents));
  }

  @Override
  public @Nullable String apply(UUID id) {
    String known = ready.get(id);
    return known == null ? book.pieces().codes(Set.of(id)).get(id) : known;
  }
}
