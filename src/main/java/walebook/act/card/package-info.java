/** Record cards filled with a pen in a room without a laptop, typed in after the lesson. */
@NullMarked
package walebook.act.card;

import org.jspecify.annotations.NullMarked;
