/** Workbooks out: a class's term as sheets with a chart; the only room that knows POI. */
@NullMarked
package walebook.sheet;

import org.jspecify.annotations.NullMarked;
