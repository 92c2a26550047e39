/** Terms, classes, students and machines of a room. */
@NullMarked
package walebook.act.classroom;

import org.jspecify.annotations.NullMarked;
