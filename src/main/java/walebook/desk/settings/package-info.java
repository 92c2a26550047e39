/** What a book and a window are set to. */
@NullMarked
package walebook.desk.settings;

import org.jspecify.annotations.NullMarked;
