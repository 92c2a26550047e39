package walebook.record;

import java.time.Instant;
import java.util.UUID;

/**
 * What lies in the bin.
 *
 * @param stepId the step that put it there
 * @param entity the table it came from
 * @param rows the row and what hung on it, in the history's JSON
 * @param who put it there; empty when nobody said
 * @param putAt when
 */
public record Binned(
    UUID id, UUID stepId, String entity, UUID entityId, String rows, String who, Instant putAt) {}
