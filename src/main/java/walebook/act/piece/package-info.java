/** Logging test pieces: plan, form, check, save, sew again, find. */
@NullMarked
package walebook.act.piece;

import org.jspecify.annotations.NullMarked;
