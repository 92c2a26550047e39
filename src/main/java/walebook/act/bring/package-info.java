/** Bringing rosters and test pieces in from spreadsheets, whole or not at all. */
@NullMarked
package walebook.act.bring;

import org.jspecify.annotations.NullMarked;
