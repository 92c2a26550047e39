/** What classes, terms and books together know, and how one student grows. */
@NullMarked
package walebook.compare.known;

import org.jspecify.annotations.NullMarked;
