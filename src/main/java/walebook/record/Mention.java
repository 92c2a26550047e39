package walebook.record;

import java.util.UUID;

/**
 * A place where typed text seems to name somebody.
 *
 * @param table and id: the row
 * @param column of the text
 * @param text the words around it
 * @param whole true when the whole name stands there, which is replaced; otherwise a part of it
 */
public record Mention(String table, UUID id, String column, String text, boolean whole) {}
