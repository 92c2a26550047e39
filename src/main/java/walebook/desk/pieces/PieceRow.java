package walebook.desk.pieces;

import java.time.LocalDate;
import java.util.UUID;

/**
 * A piece as a row of the list.
 *
 * @param code as spoken
 * @param end what became of the seam, in words
 * @param stretchPercent NaN where it was not measured
 * @param stretch as shown, with a sign for "at least"
 */
public record PieceRow(
    UUID id,
    String code,
    LocalDate sewnOn,
    String student,
    String cloth,
    String stitch,
    String end,
    double stretchPercent,
    String stretch,
    String verdict,
    String faults) {}
