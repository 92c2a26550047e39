package walebook.book.gather;

import java.nio.file.Path;

/**
 * A book to gather from, checked and ready: nothing more is written to it.
 *
 * @param shown the file that a person picked
 * @param file the file to read: the same one, or a copy that was brought to the present shape
 */
public record SourceBook(Path shown, Path file) {}
