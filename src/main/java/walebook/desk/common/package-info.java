/** Controls shared by the places: fields, pictures, workings, notices, work in the background. */
@NullMarked
package walebook.desk.common;

import org.jspecify.annotations.NullMarked;
