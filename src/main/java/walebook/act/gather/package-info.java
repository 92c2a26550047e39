/** Gathering students' books, deciding what differs, giving out starter books. */
@NullMarked
package walebook.act.gather;

import org.jspecify.annotations.NullMarked;
