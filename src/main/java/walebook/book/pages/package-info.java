/**
 * Reads the pages of a database file without a database, for files that no database opens any more.
 * Knows the format (page header, cells, records, log of writes), not what the rows mean.
 */
@NullMarked
package walebook.book.pages;

import org.jspecify.annotations.NullMarked;
