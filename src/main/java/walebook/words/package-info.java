/** The sentences people read: keys of messages and problems turned into plain words. */
@NullMarked
package walebook.words;

import org.jspecify.annotations.NullMarked;
