/** The command line: parse, act, show; text for people, JSON for programs. */
@NullMarked
package walebook.command;

import org.jspecify.annotations.NullMarked;
