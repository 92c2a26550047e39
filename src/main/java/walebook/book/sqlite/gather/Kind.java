package walebook.book.sqlite.gather;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A kind of record: a table with the tables of its parts. Parts have no life of their own; each
 * change of one changes the version of the record that it belongs to.
 *
 * @param table of the record itself
 * @param unique columns that no two records share, and that are given a free value in a clash
 * @param natural columns that tell the same record under another key; empty when only the key does
 * @param label column that people call it by; empty when there is none
 */
record Kind(
    String table, List<Part> parts, List<String> unique, List<String> natural, String label) {

  /**
   * A table of parts.
   *
   * @param owner column that refers to the record, or to the part that it hangs on
   * @param via the table between, or null
   * @param ownerKey the column that tells the part between from its like
   */
  record Part(String table, String owner, @Nullable String via, String viaOwner, String ownerKey) {
    static Part of(String table, String owner) {
      return new Part(table, owner, null, "", "");
    }

    /** The parts of one record, as a condition. */
    String ofRecord(String schema, String alias, String recordId) {
      return via == null
          ? alias + "." + owner + " = " + recordId
          : alias
              + "."
              + owner
              + " IN (SELECT v.id FROM "
              + schema
              + "."
              + via
              + " v WHERE v."
              + viaOwner
              + " = "
              + recordId
              + ")";
    }
  }

  /** The history comes along with the records that it tells of. */
  static final String HISTORY = "change_log";

  /** Who added what, which is of the history, too; its key is that of the row it tells of. */
  static final String ADDED = "row_added";

  /** In an order in which each refers only to those before it, or to itself. */
  static final List<Kind> ALL =
      List.of(
          named("tutor"),
          named("student"),
          named("term"),
          named("school_class"),
          new Kind("class_student", List.of(), List.of(), List.of("class_id", "student_id"), ""),
          new Kind(
              "machine",
              List.of(
                  Part.of("machine_stitch", "machine_id"), Part.of("machine_dial", "machine_id")),
              List.of("number"),
              List.of(),
              "number"),
          named("cloth"),
          new Kind(
              "pack",
              List.of(Part.of("pack_picture", "pack_id")),
              List.of(),
              List.of("content_hash"),
              "title"),
          new Kind("shelved_pack", List.of(), List.of(), List.of("pack_id"), ""),
          new Kind(
              "kit_price", List.of(), List.of(), List.of("cloth_id", "what", "is_metre"), "what"),
          new Kind("lesson", List.of(), List.of(), List.of(), "title"),
          new Kind("criterion", List.of(), List.of(), List.of("class_id", "code"), "code"),
          plain("cloth_reading"),
          plain("cloth_wash"),
          new Kind("planned_piece", List.of(), List.of("code"), List.of(), "code"),
          plain("planned_reading"),
          new Kind(
              "test_piece",
              List.of(Part.of("piece_pull", "piece_id"), Part.of("fault_seen", "piece_id")),
              List.of("code", "planned_id"),
              List.of(),
              "code"),
          new Kind(
              "criterion_tag",
              List.of(),
              List.of(),
              List.of("criterion_id", "piece_id", "lesson_id"),
              ""),
          new Kind("piece_check", List.of(), List.of(), List.of("piece_id", "checked_by"), ""),
          plain("feedback"),
          new Kind("bank_comment", List.of(), List.of(), List.of("says"), "says"),
          new Kind("photo", List.of(Part.of("photo_image", "id")), List.of(), List.of(), "caption"),
          plain("note"),
          new Kind(
              "garment_sheet",
              List.of(
                  Part.of("garment_girth", "sheet_id"),
                  Part.of("garment_opening", "sheet_id"),
                  new Part("garment_edge", "opening_id", "garment_opening", "sheet_id", "edge")),
              List.of(),
              List.of(),
              "name"),
          new Kind(
              "value_mark",
              List.of(),
              List.of(),
              List.of("piece_id", "reading_id", "marked_value"),
              ""),
          plain(ADDED),
          plain(HISTORY));

  /**
   * Never gathered: what is about the book itself, what is half typed, bodies' girths, the bin, and
   * the way back through another book's steps.
   */
  static final Set<String> LEFT_OUT =
      Set.of(
          "book_info",
          "draft",
          "draft_field",
          "private_girth",
          "step_mirror",
          "bin_item",
          "kept_blob",
          "gathered_book",
          "gathered_row",
          "gather_conflict");

  /** Records of these made in two books under one name are likely the same thing. */
  static final Set<String> BY_NAME = Set.of("tutor", "student", "term", "school_class", "cloth");

  /** Records whose like under another key is the same: their content is what tells them. */
  static final Set<String> ALIKE =
      Set.of("class_student", "pack", "shelved_pack", "criterion_tag", "bank_comment");

  boolean isHistory() {
    return table.equals(HISTORY) || table.equals(ADDED);
  }

  private static Kind named(String table) {
    return new Kind(table, List.of(), List.of(), List.of(), "name");
  }

  private static Kind plain(String table) {
    return new Kind(table, List.of(), List.of(), List.of(), "");
  }

  static Kind of(String table) {
    return ALL.stream()
        .filter(each -> each.table.equals(table))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("not gathered: " + table));
  }
}
