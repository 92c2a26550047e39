/** The place of test pieces: log one, find one, look at one with its chain of attempts. */
@NullMarked
package walebook.desk.pieces;

import org.jspecify.annotations.NullMarked;
