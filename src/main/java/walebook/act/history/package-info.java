/** Looking back: what was changed, taking it back and doing it again, the bin. */
@NullMarked
package walebook.act.history;

import org.jspecify.annotations.NullMarked;
