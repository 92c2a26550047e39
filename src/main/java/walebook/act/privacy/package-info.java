/** Taking a person out of a book. */
@NullMarked
package walebook.act.privacy;

import org.jspecify.annotations.NullMarked;
