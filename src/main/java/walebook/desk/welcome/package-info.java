/** What stands in the window while no book is open. */
@NullMarked
package walebook.desk.welcome;

import org.jspecify.annotations.NullMarked;
