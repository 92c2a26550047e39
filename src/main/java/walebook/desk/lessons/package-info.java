/** The lesson packs: read, take up for the class, see the plan. */
@NullMarked
package walebook.desk.lessons;

import org.jspecify.annotations.NullMarked;
