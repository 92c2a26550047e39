/** Making, opening and keeping books. */
@NullMarked
package walebook.act.book;

import org.jspecify.annotations.NullMarked;
