/** How any calculation shows itself: value, verdict and the steps a teacher would write. */
@NullMarked
package walebook.working;

import org.jspecify.annotations.NullMarked;
