/** The place where evidence becomes a decision: every check with its working. */
@NullMarked
package walebook.desk.decide;

import org.jspecify.annotations.NullMarked;
