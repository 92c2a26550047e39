package walebook.record;

import org.jspecify.annotations.Nullable;

/**
 * How a stretch was measured; the number depends on all of it.
 *
 * @param loadG hung weight in g when pulled by a load
 * @param holdS seconds held stretched
 * @param restS seconds between release and the reading after
 */
public record How(
    @Nullable Fold fold,
    @Nullable Pull pull,
    @Nullable Double loadG,
    @Nullable Double holdS,
    @Nullable Double restS) {
  public static final How UNKNOWN = new How(null, null, null, null, null);

  public How {
    Check.positive("loadG", loadG);
    Check.notNegative("holdS", holdS);
    Check.notNegative("restS", restS);
  }
}
