/** Tests of the lesson packs. */
@NullMarked
package walebook.lesson;

import org.jspecify.annotations.NullMarked;
