package walebook.record;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An opening of a garment.
 *
 * @param edge key of the edge, such as {@code neckline}
 * @param over key of the girth that it passes over
 * @param openingMm on its seam line, mm; null while not measured
 * @param seams how many seams cross it
 * @param shape key of a row in the table of neck shapes
 * @param bandRatio a band's length as a share of the opening; null without a band
 * @param bandWidthMm its finished width, mm; both or neither
 * @param edges what goes round it beside the cloth
 */
public record GarmentOpening(
    String edge,
    String over,
    @Nullable Double openingMm,
    int seams,
    String shape,
    @Nullable Double bandRatio,
    @Nullable Double bandWidthMm,
    List<GarmentEdge> edges) {
  public GarmentOpening {
    Check.text("edge", edge);
    Check.text("over", over);
    Check.positive("openingMm", openingMm);
    Check.within("seams", seams, 0, 20);
    Check.text("shape", shape);
    Check.positive("bandRatio", bandRatio);
    Check.positive("bandWidthMm", bandWidthMm);
    if ((bandRatio == null) != (bandWidthMm == null)) {
      throw new IllegalArgumentException("bandRatio and bandWidthMm belong together");
    }
    edges = List.copyOf(edges);
  }
}
