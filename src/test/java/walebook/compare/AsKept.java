package walebook.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jspecify.annotations.Nullable;
import walebook.statistics.AdjustedMean;
import walebook.statistics.Summary;

/** Figures of pieces that were let go against those of the same pieces that were kept. */
final class AsKept {
  private AsKept() {}

  /** Sums that were made in another order differ in their last digits alone. */
  static void close(@Nullable Double found, @Nullable Double kept) {
    if (found == null || kept == null) {
      assertThat(found).isEqualTo(kept);
    } else {
      assertThat(found).isCloseTo(kept, within(1e-8));
    }
  }

  static void close(@Nullable Summary found, @Nullable Summary kept) {
    close(
        found == null ? null : Double.valueOf(found.mean()),
        kept == null ? null : Double.valueOf(kept.mean()));
    close(found == null ? null : found.sd(), kept == null ? null : kept.sd());
  }

  static void close(@Nullable AdjustedMean found, @Nullable AdjustedMean kept) {
    close(
        found == null ? null : Double.valueOf(found.mean()),
        kept == null ? null : Double.valueOf(kept.mean()));
    close(low(found), low(kept));
  }

  private static @Nullable Double low(@Nullable AdjustedMean mean) {
    return mean == null || mean.interval() == null ? null : Double.valueOf(mean.interval().low());
  }
}
