package walebook.compare.alike;

import java.util.UUID;

/**
 * One reading that counts.
 *
 * @param stretch percent
 * @param cycle which stretch of the same strip it was
 */
public record ReadingDot(UUID readingId, double stretch, int cycle) {}
