/** Whether a class measures alike: who reads high, who scatters, what a difference must pass. */
@NullMarked
package walebook.compare.alike;

import org.jspecify.annotations.NullMarked;
