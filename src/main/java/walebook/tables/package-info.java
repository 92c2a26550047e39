/** The reference tables of the trade, read from their CSV files into the calculations' rows. */
@NullMarked
package walebook.tables;

import org.jspecify.annotations.NullMarked;
