/** The term's record: class, students, machines, export. */
@NullMarked
package walebook.desk.term;

import org.jspecify.annotations.NullMarked;
