/** Gathering books with what only SQLite has: attached files and rows copied between them. */
@NullMarked
package walebook.book.sqlite.gather;

import org.jspecify.annotations.NullMarked;
