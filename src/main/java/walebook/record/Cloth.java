package walebook.record;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A cloth in the room.
 *
 * @param kind key of a row in the table of fabric kinds, or the tutor's own word
 * @param fibre in words, such as {@code 95 % cotton, 5 % elastane}
 * @param massGm2 mass per unit area, g/m²
 * @param thicknessMm of one layer
 */
public record Cloth(
    UUID id,
    String name,
    String kind,
    String fibre,
    @Nullable Double elastanePercent,
    @Nullable Double massGm2,
    @Nullable Double widthMm,
    @Nullable Double thicknessMm,
    Edge edge,
    String remark,
    boolean retired,
    Stamp stamp) {
  public Cloth {
    Check.text("name", name);
    Check.within("elastanePercent", elastanePercent, 0, 100);
    Check.positive("massGm2", massGm2);
    Check.positive("widthMm", widthMm);
    Check.positive("thicknessMm", thicknessMm);
  }
}
