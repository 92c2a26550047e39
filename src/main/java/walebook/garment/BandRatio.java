package walebook.garment;

import java.util.List;
import java.util.Optional;
import walebook.working.Band;

/**
 * A row of the table of band ratios: how long a band is cut against its opening, by how far the
 * band's cloth stretches.
 *
 * @param place where the band sits
 * @param from stretch of the band's cloth along the band, per cent, this and more
 * @param below and under this
 * @param ratioFrom the shortest usual band, as a share of the opening
 * @param ratioTo the longest
 */
public record BandRatio(
    String key,
    Place place,
    double from,
    double below,
    double ratioFrom,
    double ratioTo,
    String source)
    implements Band {

  /** Where a band sits. */
  public enum Place {
    NECK("neck"),
    CUFF("cuff"),
    WAIST("waist");

    private final String key;

    Place(String key) {
      this.key = key;
    }

    /** The word used in the table and on the command line. */
    public String key() {
      return key;
    }

    /** The place of a word. */
    public static Place of(String key) {
      for (Place place : values()) {
        if (place.key.equals(key)) {
          return place;
        }
      }
      throw new IllegalArgumentException("place of a band must be neck, cuff or waist: " + key);
    }
  }

  public BandRatio {
    Band.check(key, from, below, source);
    if (!(ratioFrom > 0 && ratioFrom <= ratioTo && ratioTo <= 1)) {
      throw new IllegalArgumentException("ratios must rise within 0 to 1: " + key);
    }
  }

  /** The row for a band; empty when the table has none. */
  public static Optional<BandRatio> of(List<BandRatio> rows, Place place, double stretch) {
    return rows.stream().filter(row -> row.place == place && row.holds(stretch)).findFirst();
  }
}
