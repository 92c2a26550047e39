package walebook.desk.pieces;

/**
 * One of the things that a field can be.
 *
 * @param key as it is typed and kept; empty for nothing chosen
 * @param name as people read it
 */
public record Choice(String key, String name) {}
