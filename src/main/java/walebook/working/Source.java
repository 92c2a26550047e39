package walebook.working;

import java.util.Objects;

/**
 * Where a formula or a figure comes from.
 *
 * @param kind how far to trust it
 * @param citation the standard, book or table; for common practice a short word on whose
 */
public record Source(Kind kind, String citation) {

  /** How far to trust a figure. */
  public enum Kind {
    STANDARD,
    PUBLISHED,
    DEFINITION,
    COMMON_PRACTICE,
    MEASURED_HERE,
    ESTIMATE
  }

  public Source {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(citation, "citation");
  }
}
