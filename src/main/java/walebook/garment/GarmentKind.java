package walebook.garment;

import java.util.List;
import java.util.Objects;

/**
 * A row of the table of garment kinds: what has to be asked about such a garment.
 *
 * @param fit the usual fit, a key of the table of ease by fit
 * @param wear how it is worn
 * @param margin a key of the table of opening margins
 * @param girths the girths it goes round
 * @param openings the edges that must pass over something
 * @param cautions what to warn of
 */
public record GarmentKind(
    String key,
    String name,
    String fit,
    Wear wear,
    String margin,
    List<Girth> girths,
    List<KindOpening> openings,
    List<GarmentCaution> cautions,
    String source) {
  public GarmentKind {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(fit, "fit");
    Objects.requireNonNull(wear, "wear");
    Objects.requireNonNull(margin, "margin");
    Objects.requireNonNull(source, "source");
    girths = List.copyOf(girths);
    openings = List.copyOf(openings);
    cautions = List.copyOf(cautions);
    if (openings.isEmpty()) {
      throw new IllegalArgumentException("a garment has an opening: " + key);
    }
  }
}
