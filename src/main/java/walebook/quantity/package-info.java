/** Lengths, shares and masses with their units: reading what was typed, showing what is known. */
@NullMarked
package walebook.quantity;

import org.jspecify.annotations.NullMarked;
