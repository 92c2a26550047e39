package walebook.lesson;

/** How large a pack and its parts may be; far above what a lesson needs. */
final class PackLimits {
  /** pack.yaml and lesson.md, each. */
  static final long TEXT_BYTES = 256 * 1024;

  /** One picture. */
  static final long PICTURE_BYTES = 2L * 1024 * 1024;

  /** All of a pack's files. */
  static final long ALL_BYTES = 32L * 1024 * 1024;

  /** A zip with a pack in it; pictures hardly shrink, so it may be as large as the pack. */
  static final long ZIP_BYTES = 34L * 1024 * 1024;

  /** Entries of a zip, what systems leave behind by themselves included. */
  static final int ZIP_ENTRIES = 400;

  /** How many times its packed size a file may have; writing and drawings shrink tenfold. */
  static final long ZIP_RATIO = 100;

  /** Unpacked bytes below which the ratio says nothing. */
  static final long ZIP_RATIO_FROM = 64 * 1024;

  /** Pixels along a side of a picture; a small file can hold a huge one. */
  static final int PICTURE_SIDE = 6000;

  /** Files in a folder. */
  static final int FILES = 100;

  /** Lists and maps inside one another in pack.yaml. */
  static final int DEPTH = 10;

  /** Lists and quotes inside one another in lesson.md. */
  static final int TEXT_DEPTH = 12;

  /** Characters of one value in pack.yaml. */
  static final int VALUE_CHARS = 4000;

  /** Entries in pack.yaml altogether. */
  static final int ENTRIES = 5000;

  /** Problems told at once; beyond that nobody reads on. */
  static final int PROBLEMS = 200;

  private PackLimits() {}

  static String megabytes(long bytes) {
    return bytes / (1024 * 1024) + " MB";
  }
}
