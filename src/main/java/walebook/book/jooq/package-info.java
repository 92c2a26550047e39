/** The book's interfaces carried out in jOOQ's language; what only SQLite has stands apart. */
@NullMarked
package walebook.book.jooq;

import org.jspecify.annotations.NullMarked;
