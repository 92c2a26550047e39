package walebook.record;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What one dial setting sewed when it was measured.
 *
 * @param dial the number on the dial
 * @param sewnMm measured on the cloth, mm
 */
public record DialReading(
    UUID id, @Nullable UUID termId, Dial what, double dial, double sewnMm, LocalDate measuredOn) {
  public DialReading {
    Check.notNegative("dial", dial);
    Check.notNegative("sewnMm", sewnMm);
  }

  double scaled(double other) {
    return dial == 0 ? sewnMm : sewnMm * other / dial;
  }

  double towards(DialReading next, double other) {
    double share = (other - dial) / (next.dial - dial);
    return sewnMm + share * (next.sewnMm - sewnMm);
  }
}
