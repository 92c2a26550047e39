package walebook.garment;

import java.util.List;

/** The rows of the reference tables that the calculations on garments go by. */
public record GarmentRows(
    List<ComfortBand> comfort,
    List<EaseFit> fits,
    List<BandRatio> bandRatios,
    List<BandFit> bandFits,
    List<NeckShape> neckShapes,
    List<BodyGirth> girths,
    List<GarmentKind> kinds,
    List<OpeningMargin> margins) {
  public GarmentRows {
    comfort = List.copyOf(comfort);
    fits = List.copyOf(fits);
    bandRatios = List.copyOf(bandRatios);
    bandFits = List.copyOf(bandFits);
    neckShapes = List.copyOf(neckShapes);
    girths = List.copyOf(girths);
    kinds = List.copyOf(kinds);
    margins = List.copyOf(margins);
  }

  /**
   * The margin of a key in percentage points.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public double margin(String key) {
    return margins.stream()
        .filter(row -> row.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no such margin: " + key))
        .points();
  }

  /**
   * The turn of a neck shape in radians.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public double turn(String shape) {
    return neckShapes.stream()
        .filter(row -> row.key().equals(shape))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no such neck shape: " + shape))
        .turn();
  }
}
