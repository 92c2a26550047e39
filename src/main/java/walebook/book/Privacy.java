package walebook.book;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import walebook.record.Mention;

/** Takes a person out of the book for good. None of it can be undone. */
public interface Privacy {
  /** How many rows a student has, by table; tables with none are left out. */
  Map<String, Integer> rowsOf(UUID studentId);

  /** Text people typed that has the name, or a part of it as a word, outside the name's field. */
  List<Mention> mentions(UUID studentId);

  /**
   * Puts another word in the place of the name wherever the book has it: lists, notes, history,
   * bin, drafts. Their work stays.
   */
  void rename(UUID studentId, String standIn, String alias);

  /**
   * Takes out what is the student's own: sheets, girths, notes about them, drafts, memberships.
   *
   * @param withPieces their pieces and plans, too, in history and bin as well; otherwise those stay
   *     under the stand-in
   */
  void erase(UUID studentId, boolean withPieces, String standIn, String alias);

  /** Overwrites what was freed, so that nothing of it stays in the file. Takes its time. */
  void scrub();
}
