/** The SQLite file: open, migrate, save, search; the only room that knows SQL. */
@NullMarked
package walebook.book;

import org.jspecify.annotations.NullMarked;
