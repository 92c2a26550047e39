package walebook.act.gather;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What the columns hold that may differ in a conflict; a table's own goes before the others'. */
final class ConflictColumns {
  private static final Map<String, ColumnMeaning> ALL = all();

  private ConflictColumns() {}

  private static Map<String, ColumnMeaning> all() {
    Map<String, ColumnMeaning> all = new HashMap<>();
    words(all);
    choices(all);
    numbers(all);
    ofTables(all);
    return Map.copyOf(all);
  }

  /** Words, days and what other things are called. */
  private static void words(Map<String, ColumnMeaning> all) {
    put(
        all,
        ColumnMeaning.AS_IS,
        "name alias starts_on ends_on meets joined_on left_on pressure_lower pressure_normal"
            + " pressure_higher tension_lower tension_normal tension_higher remark fibre version"
            + " title taught_on measured_on washed_on wash code says cell slot hem_method"
            + " stabiliser sewn_on thread pressure_dial tension_dial checked_on given_on made_by"
            + " reason caption author body");
    put(all, ColumnMeaning.LONG_TEXT, "pack_yaml lesson_md");
    put(all, ColumnMeaning.UNSAID, "content_hash");
    put(
        all,
        ColumnMeaning.THING,
        "term_id tutor_id class_id student_id cloth_id pack_id lesson_id planned_id parent_id"
            + " piece_id criterion_id reading_id measured_by");
    put(all, ColumnMeaning.MACHINE, "machine_id");
  }

  /** One of a few. */
  private static void choices(Map<String, ColumnMeaning> all) {
    put(
        all,
        ColumnMeaning.YES_NO,
        "is_retired does_fray does_shed does_ladder does_curl needs_finishing is_control is_dropped"
            + " is_trimmed has_sleeve is_metre");
    put(
        all,
        ColumnMeaning.CHOICE,
        "tier machine_kind what grain grain_round fold cut_edge pull method needle_point pressure"
            + " tension seam_end broke outcome seen_when");
    put(all, ColumnMeaning.CHANGED, "changed_factor");
    put(all, ColumnMeaning.MARKS, "marks_looked_at");
    put(all, ColumnMeaning.HELP, "help_given");
    put(all, ColumnMeaning.CHECKED_BY, "checked_by");
    put(all, ColumnMeaning.MARKED_VALUE, "marked_value");
    put(all, ColumnMeaning.VALUE_MARK, "mark");
    put(all, ColumnMeaning.STITCH, "stitch_type");
    put(all, ColumnMeaning.FAULT, "fault");
    put(all, ColumnMeaning.GIRTH, "girth over_girth");
    put(all, ColumnMeaning.GARMENT_EDGE, "edge");
    put(all, ColumnMeaning.LINK, "link");
    put(all, ColumnMeaning.SHAPE, "shape");
    put(all, ColumnMeaning.WEAR, "wear");
    put(all, ColumnMeaning.PICTURE_KIND, "media_type");
    put(all, ColumnMeaning.GRADE, "grade");
    put(all, ColumnMeaning.SEVERITY, "severity");
  }

  /** Numbers, by what they count. */
  private static void numbers(Map<String, ColumnMeaning> all) {
    put(
        all,
        ColumnMeaning.MARK,
        "choice_mark technique_mark performance_mark finish_mark reasoning_mark");
    put(
        all,
        ColumnMeaning.MM,
        "needle_to_knife_mm sewn_mm width_mm thickness_mm gauge_mm stretched_mm released_mm"
            + " before_mm after_mm sewn_width_mm sewn_length_mm edge_before_mm edge_sewn_mm"
            + " edge_pressed_mm end_mm gauge_from_mm gauge_to_mm allowance_mm sewn_allowance_mm"
            + " finished_mm opening_mm band_width_mm");
    put(all, ColumnMeaning.PERCENT, "elastane_percent need_percent stated_percent");
    put(all, ColumnMeaning.GRAMS, "load_g");
    put(all, ColumnMeaning.GRAMS_PER_M2, "mass_gm2");
    put(all, ColumnMeaning.SECONDS, "rest_s hold_s");
    put(all, ColumnMeaning.MINUTES, "sewing_minutes");
    put(all, ColumnMeaning.PIXELS, "width_px height_px");
    put(all, ColumnMeaning.DIAL, "dial dial_width dial_length");
    put(all, ColumnMeaning.RATIO, "feed_least feed_most differential_feed band_ratio");
    put(all, ColumnMeaning.SIZE, "needle_nm");
    put(all, ColumnMeaning.NTH, "place cycle nth");
    put(all, ColumnMeaning.LAYERS, "layers");
    put(all, ColumnMeaning.SEAMS, "seams");
    put(all, ColumnMeaning.TIMES, "repeats readings_asked");
  }

  /** A name that means something else in some tables. */
  private static void ofTables(Map<String, ColumnMeaning> all) {
    put(all, ColumnMeaning.CLOTH_KIND, "cloth.kind");
    put(all, ColumnMeaning.CHOICE, "machine.kind");
    put(all, ColumnMeaning.GARMENT_KIND, "garment_sheet.kind");
    put(all, ColumnMeaning.CHOICE, "fault_seen.place");
    put(all, ColumnMeaning.AS_IS, "test_piece.stitch_name kit_price.what");
    put(all, ColumnMeaning.PRICE, "price");
    put(all, ColumnMeaning.MACHINE, "machine.number");
  }

  private static void put(Map<String, ColumnMeaning> all, ColumnMeaning meaning, String columns) {
    for (String each : columns.split(" ")) {
      all.put(each, meaning);
    }
  }

  /** The meaning of a column, or null where nobody said it. */
  static @Nullable ColumnMeaning find(String table, String column) {
    ColumnMeaning own = ALL.get(table + "." + column);
    return own == null ? ALL.get(column) : own;
  }
}
