package walebook.book;

/** What is written where a rescued row leans on one whose name is gone; worded outside. */
public record RescueNames(
    String book, String term, String schoolClass, String student, String cloth) {}
