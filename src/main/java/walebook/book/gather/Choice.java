package walebook.book.gather;

/** How a conflict is decided. */
public enum Choice {
  /** What this book has stands. */
  MINE,
  /** What the other book has stands; where both rows were kept, they stay two. */
  THEIRS
}
