package walebook.desk.classroom;

import java.util.function.Consumer;
import walebook.desk.common.InTurn;
import walebook.desk.common.Notice;

/**
 * What the place lends each of its parts.
 *
 * @param told takes what is to be said in the line at the foot
 * @param inTurn puts what is found into the window one piece a frame
 */
record Around(Consumer<Notice> told, InTurn inTurn) {}
