package walebook.record;

import org.jspecify.annotations.Nullable;

/** How a cloth's cut edge behaves; null where nobody has looked yet. */
public record Edge(
    @Nullable Boolean frays,
    @Nullable Boolean sheds,
    @Nullable Boolean ladders,
    @Nullable Boolean curls,
    @Nullable Boolean needsFinishing) {
  public static final Edge UNKNOWN = new Edge(null, null, null, null, null);
}
