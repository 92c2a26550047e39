package walebook.record;

import java.time.LocalDate;
import java.util.UUID;

/** What a wash did to a marked length; mm. */
public record ClothWash(
    UUID id,
    UUID clothId,
    Grain grain,
    double beforeMm,
    double afterMm,
    String wash,
    LocalDate washedOn,
    Stamp stamp) {
  public ClothWash {
    Check.positive("beforeMm", beforeMm);
    Check.positive("afterMm", afterMm);
    if (grain == Grain.BIAS) {
      throw new IllegalArgumentException("grain must be wale or course");
    }
  }

  /** Change of the marked length, in percent of what it was; minus is shrinkage. */
  public double changePercent() {
    return 100 * (afterMm - beforeMm) / beforeMm;
  }
}
