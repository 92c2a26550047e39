package walebook.kit;

/**
 * A piece where it lies.
 *
 * @param piece number of its kind in the list of pieces, from 0
 * @param xMm from the left edge, across the cloth
 * @param yMm from the lower edge, along the cloth
 * @param acrossMm its size across as it lies
 * @param alongMm its size along as it lies
 */
public record Placed(int piece, double xMm, double yMm, double acrossMm, double alongMm) {}
