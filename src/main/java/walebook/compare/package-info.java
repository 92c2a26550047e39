/** What a class found: asks the book, leans on the statistics. */
@NullMarked
package walebook.compare;

import org.jspecify.annotations.NullMarked;
