/** The program's face: colours, type, sizes, light and dark. */
@NullMarked
package walebook.desk.look;

import org.jspecify.annotations.NullMarked;
