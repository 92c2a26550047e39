/** Checks of the statistics against published values, libraries and made classes. */
@NullMarked
package walebook.statistics;

import org.jspecify.annotations.NullMarked;
