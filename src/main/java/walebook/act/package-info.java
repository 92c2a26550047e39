/** One class for each thing a person does; window and command line both call it. */
@NullMarked
package walebook.act;

import org.jspecify.annotations.NullMarked;
