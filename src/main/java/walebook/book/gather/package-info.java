/** Gathering other books into this one: what came of it, and what a person has to decide. */
@NullMarked
package walebook.book.gather;

import org.jspecify.annotations.NullMarked;
