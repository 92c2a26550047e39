/** Measurements: what a save costs beside a bare insert, and what a keystroke costs. */
@NullMarked
package walebook.bench;

import org.jspecify.annotations.NullMarked;
