package walebook.record;

import java.util.UUID;

/**
 * The piece that this one tries again with one change.
 *
 * @param changed which factor was changed, such as {@code dial_width}
 */
public record Parent(UUID pieceId, String changed) {}
