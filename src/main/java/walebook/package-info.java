/** The program's beginning. */
@NullMarked
package walebook;

import org.jspecify.annotations.NullMarked;
