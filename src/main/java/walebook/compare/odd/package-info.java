/** Readings that deserve a second look; flagged, never deleted. */
@NullMarked
package walebook.compare.odd;

import org.jspecify.annotations.NullMarked;
