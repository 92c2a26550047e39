/** Cloths and their readings. */
@NullMarked
package walebook.act.cloth;

import org.jspecify.annotations.NullMarked;
