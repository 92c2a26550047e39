/** Measurements: what a save, a keystroke, a comparison, an export or a gathering costs. */
@NullMarked
package walebook.bench;

import org.jspecify.annotations.NullMarked;
