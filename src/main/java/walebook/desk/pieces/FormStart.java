package walebook.desk.pieces;

import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceRoom;

/**
 * What a log form begins with.
 *
 * @param entry the texts in its fields
 * @param before a piece sewn again as it stood before the change; null for others
 * @param title what is being logged, in words
 * @param readings how many pulls are asked for
 * @param resumed whether the texts come from a draft
 */
record FormStart(
    PieceEntry entry,
    @Nullable PieceEntry before,
    PieceRoom room,
    String title,
    int readings,
    boolean resumed) {}
