/** The class: what its settings did, and who has logged what. */
@NullMarked
package walebook.desk.classroom;

import org.jspecify.annotations.NullMarked;
