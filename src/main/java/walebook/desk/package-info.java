/** The window: the only room that knows JavaFX. */
@NullMarked
package walebook.desk;

import org.jspecify.annotations.NullMarked;
