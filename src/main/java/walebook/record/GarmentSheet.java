package walebook.record;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A garment that somebody means to sew. The body's own girths are no part of it: they are private
 * and kept apart.
 *
 * @param studentId whose it is; null for one that a class works on together
 * @param kind key of a row in the table of garment kinds
 * @param clothId the chosen cloth; null while none is chosen
 * @param grainRound which direction goes round the body, wale-wise or course-wise
 * @param wear {@code day} or {@code sport}
 * @param girths of the finished garment, each girth once
 * @param openings each edge once
 */
public record GarmentSheet(
    UUID id,
    @Nullable UUID studentId,
    String name,
    String kind,
    @Nullable UUID clothId,
    Grain grainRound,
    String wear,
    PatternAsks pattern,
    GarmentSewing sewing,
    List<GarmentGirth> girths,
    List<GarmentOpening> openings,
    String remark,
    Stamp stamp) {
  public GarmentSheet {
    Check.text("name", name);
    Check.text("kind", kind);
    Check.text("wear", wear);
    Objects.requireNonNull(pattern, "pattern");
    Objects.requireNonNull(sewing, "sewing");
    girths = List.copyOf(girths);
    openings = List.copyOf(openings);
    if (grainRound == Grain.BIAS) {
      throw new IllegalArgumentException("grainRound must be wale or course");
    }
    once("girths", girths.stream().map(GarmentGirth::girth).toList());
    once("openings", openings.stream().map(GarmentOpening::edge).toList());
  }

  private static void once(String name, List<String> keys) {
    Set<String> seen = new HashSet<>();
    for (String key : keys) {
      if (!seen.add(key)) {
        throw new IllegalArgumentException(name + " must hold each once: " + key);
      }
    }
  }
}
