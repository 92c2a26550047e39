/** Starting the window: which book, which places, and where settings are kept. */
@NullMarked
package walebook.desk.start;

import org.jspecify.annotations.NullMarked;
