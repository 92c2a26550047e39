package walebook.act.classroom;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import walebook.act.piece.JudgePiece;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.compare.ClothStretch;
import walebook.compare.known.Growth;
import walebook.record.Grain;
import walebook.record.MarkedValue;
import walebook.record.SchoolClass;
import walebook.record.Term;
import walebook.record.TestPiece;
import walebook.working.Verdict;

/** Asks how one student grew over classes and terms. */
public final class AskGrowth {
  private final Book book;

  public AskGrowth(Book book) {
    this.book = book;
  }

  /** Reads the student's pieces and sorts them into tries, term by term. */
  public Growth ask(UUID studentId) {
    Map<UUID, String> terms = new HashMap<>();
    for (SchoolClass each : book.classes().all()) {
      Term term = book.terms().find(each.termId());
      terms.put(each.id(), term == null ? each.name() : term.name());
    }
    List<TestPiece> pieces = book.pieces().list(PieceFilter.ALL.ofStudent(studentId));
    return Growth.of(pieces, seams(pieces), classId -> terms.getOrDefault(classId, ""));
  }

  /** The verdict on each seam; a pull that was set aside counts as none. */
  private Function<TestPiece, Verdict> seams(List<TestPiece> pieces) {
    Set<UUID> cloths = new HashSet<>();
    pieces.forEach(each -> cloths.add(each.cloth().clothId()));
    Map<UUID, Map<Grain, ClothStretch>> stretches =
        Stretches.ofReadings(book.clothLog().stretchesOf(cloths), Stretches.setAside(book));
    Set<UUID> setAside = book.marks().setAside(MarkedValue.SEAM_STRETCH);
    return piece ->
        setAside.contains(piece.id())
            ? Verdict.NOT_KNOWN
            : JudgePiece.of(
                    piece.measure(),
                    stretches
                        .getOrDefault(piece.cloth().clothId(), Map.of())
                        .get(piece.cloth().grain()))
                .verdict();
  }
}
