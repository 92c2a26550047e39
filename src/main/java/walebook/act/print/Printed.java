package walebook.act.print;

import java.nio.file.Path;

/** A file that was printed to, and how many pages it has. */
public record Printed(Path file, int pages) {}
