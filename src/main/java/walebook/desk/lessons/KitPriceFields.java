package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import walebook.act.lesson.KitTyped;
import walebook.desk.common.FormFields;
import walebook.lesson.LessonPack;
import walebook.lesson.Material;
import walebook.lesson.PiecesPlan;
import walebook.lesson.Plan;

/** The fields of a kit's prices, and what the book had in them. */
final class KitPriceFields {
  private static final String PRICE = "price-";

  private final List<String> names = new ArrayList<>();
  private final List<Price> others = new ArrayList<>();

  /** Prices as the book had them, by field; a field that was emptied since is forgotten there. */
  private final Map<String, String> remembered = new HashMap<>();

  /**
   * A price that can be typed for what is no cloth of the plan.
   *
   * @param field by whose name it is typed
   * @param what it is the price of
   * @param metre for a metre of it; else for one
   */
  record Price(String field, String what, boolean metre) {}

  /**
   * The fields of a pack's prices.
   *
   * @param thread what thread is called that no pack names
   */
  KitPriceFields(LessonPack pack, String thread) {
    for (Plan.ClothSlot each : pack.plan().cloths()) {
      names.add(of(each));
    }
    boolean named = false;
    for (Material each : pack.needs().perStudent()) {
      named = named || each.threadM() != null;
      boolean isCut = each.alongMm() != null && each.acrossMm() != null;
      boolean metre = each.alongMm() != null || each.threadM() != null;
      if (!isCut || each.cloth() == null) {
        others.add(new Price(PRICE + each.what(), each.what(), metre));
      }
    }
    if (!named && pack.plan() instanceof PiecesPlan) {
      others.add(new Price(PRICE + KitTyped.THREAD, thread, true));
    }
    others.forEach(each -> names.add(each.field()));
  }

  /** The name of the field for the price of a metre of a cloth. */
  static String of(Plan.ClothSlot slot) {
    return PRICE + slot.slot();
  }

  /** The names of all fields. */
  List<String> names() {
    return List.copyOf(names);
  }

  /** Those of what is no cloth, in the order of the pack; thread that no pack names last. */
  List<Price> others() {
    return List.copyOf(others);
  }

  /**
   * Fills in what the book remembers, but never over what somebody typed.
   *
   * @param known by the name of a slot or a material
   */
  void fill(FormFields fields, Map<String, String> known) {
    for (String name : names) {
      String was = remembered.getOrDefault(name, "");
      String now = known.getOrDefault(name.substring(PRICE.length()), "");
      if (fields.text(name).equals(was)) {
        fields.field(name).text().set(now);
      }
      remembered.put(name, now);
    }
  }

  /** What was typed, field by field. */
  Map<String, String> texts(FormFields fields) {
    Map<String, String> texts = new HashMap<>();
    names.forEach(name -> texts.put(name, fields.text(name).strip()));
    return texts;
  }

  /** The same as it is worked out with; a remembered price that was emptied stands empty. */
  List<String> typed(Map<String, String> texts) {
    List<String> typed = new ArrayList<>();
    for (String name : names) {
      String text = texts.getOrDefault(name, "");
      if (!text.isEmpty() || !remembered.getOrDefault(name, "").isEmpty()) {
        typed.add(name.substring(PRICE.length()) + "=" + text);
      }
    }
    return typed;
  }

  /** That the book now has these. */
  void kept(Map<String, String> texts) {
    remembered.putAll(texts);
  }
}
