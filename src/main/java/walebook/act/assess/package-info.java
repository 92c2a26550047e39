/** What a course asks for, how pieces were looked over, and what is missing for whom. */
@NullMarked
package walebook.act.assess;

import org.jspecify.annotations.NullMarked;
