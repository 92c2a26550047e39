package walebook.sheet;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One check of a garment, worded already; never a measure of a body.
 *
 * @param studentId whose sheet it is; null for the class's
 * @param answer empty where it would tell a body's measure
 */
public record GarmentRow(
    String garment,
    @Nullable UUID studentId,
    String kind,
    String cloth,
    String check,
    String verdict,
    String answer) {}
