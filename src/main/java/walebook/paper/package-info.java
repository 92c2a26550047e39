/** Paper: pages as PDF, black on white, made to survive a photocopier and a pen. */
@NullMarked
package walebook.paper;

import org.jspecify.annotations.NullMarked;
