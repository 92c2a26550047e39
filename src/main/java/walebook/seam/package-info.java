/** The seam's numbers: stitch geometry, measured stretch, edge change, thread, needles, faults. */
@NullMarked
package walebook.seam;

import org.jspecify.annotations.NullMarked;
