/** Making and opening a book: check, lock, back up, migrate, check again. */
@NullMarked
package walebook.book.open;

import org.jspecify.annotations.NullMarked;
