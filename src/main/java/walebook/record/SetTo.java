package walebook.record;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a piece can be told apart by: its cloth and how the machine was set.
 *
 * @param stitchName plain name
 * @param feed differential feed; 1 is neutral
 */
public record SetTo(
    UUID clothId,
    Grain grain,
    String stitchName,
    @Nullable Double dialWidth,
    @Nullable Double dialLength,
    @Nullable Needle needle,
    String hemMethod,
    @Nullable Double feed,
    @Nullable Step pressure,
    String stabiliser,
    @Nullable UUID machineId) {

  static SetTo of(TestPiece piece) {
    Setting setting = piece.setting();
    return new SetTo(
        piece.cloth().clothId(),
        piece.cloth().grain(),
        setting.stitchName(),
        setting.dialWidth(),
        setting.dialLength(),
        setting.needle(),
        setting.hemMethod(),
        setting.differentialFeed(),
        setting.pressure(),
        setting.stabiliser(),
        setting.machineId());
  }
}
