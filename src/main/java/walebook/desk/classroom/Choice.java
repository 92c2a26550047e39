package walebook.desk.classroom;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One of the things a comparison can be narrowed to.
 *
 * @param id null for all of them
 * @param name as shown
 */
record Choice(@Nullable UUID id, String name) {}
