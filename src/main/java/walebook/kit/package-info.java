/**
 * What a class needs for a lesson: pieces laid on cloth and on scraps, thread, needles, tape, cost.
 *
 * <p>Lengths are mm. A cloth's width runs across from selvedge to selvedge (course-wise), its
 * length along the selvedge (wale-wise). Everything is pure; what is looked for by chance goes by a
 * seed and a counted amount of work.
 */
@NullMarked
package walebook.kit;

import org.jspecify.annotations.NullMarked;
