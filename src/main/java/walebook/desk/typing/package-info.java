/** Typing in a whole class's record cards after the lesson, by keyboard alone. */
@NullMarked
package walebook.desk.typing;

import org.jspecify.annotations.NullMarked;
