/** Taking up a lesson pack and handing out its plan. */
@NullMarked
package walebook.act.lesson;

import org.jspecify.annotations.NullMarked;
