/** What a book holds: plain values, validated at birth. */
@NullMarked
package walebook.record;

import org.jspecify.annotations.NullMarked;
