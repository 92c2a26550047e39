/** The place to begin: who I am, the lesson in hand, my plan, my next piece. */
@NullMarked
package walebook.desk.today;

import org.jspecify.annotations.NullMarked;
