/** Which column of a stranger's table is what: plain matching, without files and books. */
@NullMarked
package walebook.act.bring.match;

import org.jspecify.annotations.NullMarked;
