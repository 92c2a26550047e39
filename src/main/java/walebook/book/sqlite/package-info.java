/** What only SQLite has: pragmas, migration scripts, backup, the lock of one writer. */
@NullMarked
package walebook.book.sqlite;

import org.jspecify.annotations.NullMarked;
