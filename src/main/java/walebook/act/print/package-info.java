/**
 * Printing: what each page needs, gathered from the book and put into a file, whole or not at all.
 */
@NullMarked
package walebook.act.print;

import org.jspecify.annotations.NullMarked;
