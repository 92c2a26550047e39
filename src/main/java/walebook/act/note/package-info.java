/** Notes about a piece, a cloth, a lesson or a student. */
@NullMarked
package walebook.act.note;

import org.jspecify.annotations.NullMarked;
