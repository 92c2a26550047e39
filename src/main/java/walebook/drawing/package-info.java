/** Pictures to scale as plain shapes, which the screen, SVG, paper and PNG all draw alike. */
@NullMarked
package walebook.drawing;

import org.jspecify.annotations.NullMarked;
