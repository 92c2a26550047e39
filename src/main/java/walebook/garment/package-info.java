/** From cloth and test pieces to the garment: ease, openings, grain, allowances, bands, details. */
@NullMarked
package walebook.garment;

import org.jspecify.annotations.NullMarked;
