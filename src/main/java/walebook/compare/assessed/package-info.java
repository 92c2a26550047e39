/** How far each student has come with what the course asks for. */
@NullMarked
package walebook.compare.assessed;

import org.jspecify.annotations.NullMarked;
