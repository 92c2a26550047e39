/** The cloth's own numbers: stretch, growth, recovery, repeats, decisions, mass and washing. */
@NullMarked
package walebook.cloth;

import org.jspecify.annotations.NullMarked;
