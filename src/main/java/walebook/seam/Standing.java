package walebook.seam;

/** How a cause stands against a piece's settings, the likeliest first. */
public enum Standing {
  /** The settings speak for it. */
  FITS,
  /** The settings say nothing of it, or nothing clear. */
  OPEN,
  /** The settings speak against it. */
  RULED_OUT
}
