/** Working from evidence to a decision about a garment. */
@NullMarked
package walebook.act.decide;

import org.jspecify.annotations.NullMarked;
