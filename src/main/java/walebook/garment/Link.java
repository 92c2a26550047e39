package walebook.garment;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import walebook.cloth.Decision;
import walebook.working.Verdict;

/**
 * One of the things that must stretch round an edge, and what is known of how far it does.
 *
 * @param kind what it is
 * @param basis how that is known
 * @param percent how far it stretches; a lower bound when it held; 0 when unknown
 * @param uncertainty standard uncertainty in percentage points, not negative
 * @param pieces how many test pieces stand behind it; 0 where they are not counted
 * @param students by how many people
 */
public record Link(
    LinkKind kind, Basis basis, double percent, double uncertainty, int pieces, int students) {

  /** How a capacity is known, the better first. */
  public enum Basis {
    /** Measured: it gave there. */
    GAVE,
    /** Measured: the cloth stopped first, so it stretches at least so far. */
    HELD,
    /** Reckoned from the stitch's geometry or stated on a packet: a guide. */
    MODEL,
    UNKNOWN
  }

  public Link {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(basis, "basis");
    if (!(percent >= 0 && Double.isFinite(percent))) {
      throw new IllegalArgumentException("percent must not be negative: " + percent);
    }
    if (!(uncertainty >= 0 && Double.isFinite(uncertainty))) {
      throw new IllegalArgumentException("uncertainty must not be negative: " + uncertainty);
    }
    if (pieces < 0 || students < 0) {
      throw new IllegalArgumentException("pieces and students must not be negative");
    }
  }

  /** A test piece that gave, or a cloth's measured stretch. */
  public static Link gave(
      LinkKind kind, double percent, double uncertainty, int pieces, int students) {
    return new Link(kind, Basis.GAVE, percent, uncertainty, pieces, students);
  }

  /** Test pieces that held to this, the cloth stopping first. */
  public static Link held(
      LinkKind kind, double percent, double uncertainty, int pieces, int students) {
    return new Link(kind, Basis.HELD, percent, uncertainty, pieces, students);
  }

  /** A capacity reckoned, not measured. */
  public static Link model(LinkKind kind, double percent) {
    return new Link(kind, Basis.MODEL, percent, 0, 0, 0);
  }

  /** A link that is there though nothing is known of it. */
  public static Link unknown(LinkKind kind) {
    return new Link(kind, Basis.UNKNOWN, 0, 0, 0, 0);
  }

  public boolean isKnown() {
    return basis != Basis.UNKNOWN;
  }

  /** Whether it reaches a need; unknown is never met, held short of the need is not known. */
  public Verdict verdict(double needPercent) {
    return switch (basis) {
      case UNKNOWN -> Verdict.NOT_KNOWN;
      case HELD -> percent - 2 * uncertainty >= needPercent ? Verdict.MET : Verdict.NOT_KNOWN;
      case GAVE, MODEL -> Decision.verdict(percent, 2 * uncertainty, needPercent);
    };
  }

  /** One link of each kind: a measured piece beats a model; of two alike the weaker counts. */
  public static List<Link> best(Collection<Link> links) {
    Comparator<Link> better = Comparator.comparing(Link::basis).thenComparingDouble(Link::percent);
    Map<LinkKind, Link> best = new EnumMap<>(LinkKind.class);
    for (Link link : links) {
      best.merge(link.kind(), link, (a, b) -> better.compare(a, b) <= 0 ? a : b);
    }
    return List.copyOf(best.values());
  }
}
