/** The window around the places, knowing none of them. */
@NullMarked
package walebook.desk.shell;

import org.jspecify.annotations.NullMarked;
