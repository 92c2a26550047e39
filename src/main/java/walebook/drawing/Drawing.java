package walebook.drawing;

import walebook.words.Words;

/** Something that can be drawn at any width and finds its own height. */
public interface Drawing {
  /** No picture is drawn wider, in picture units. */
  double MOST_WIDTH = 4000;

  /**
   * Draws it.
   *
   * @param width in picture units; taken as {@link #leastWidth()} when smaller
   * @param words for the labels inside
   */
  Picture at(double width, Words words);

  /** The width below which labels would run into each other, in picture units. */
  double leastWidth();

  /** The width it is drawn at when given this one: never below its least, never endless. */
  default double takenWidth(double width) {
    return Math.max(leastWidth(), Math.min(MOST_WIDTH, width));
  }

  /** The width it would take if it could choose, in picture units. */
  default double ownWidth() {
    return Math.max(leastWidth(), 360);
  }
}
