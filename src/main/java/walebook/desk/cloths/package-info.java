/** The cloths of the room: their cards, their readings, what was sewn on them. */
@NullMarked
package walebook.desk.cloths;

import org.jspecify.annotations.NullMarked;
