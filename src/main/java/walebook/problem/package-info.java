/** What was wrong with an input: where, what was found, what is wanted; data, not sentences. */
@NullMarked
package walebook.problem;

import org.jspecify.annotations.NullMarked;
