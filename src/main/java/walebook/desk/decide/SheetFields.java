package walebook.desk.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import walebook.desk.common.FormFields;
import walebook.desk.common.PickedField;
import walebook.desk.common.TypedField;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.MachineKind;
import walebook.seam.StitchType;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Builds the controls of a sheet's fields, each with its label, unit and choices. */
final class SheetFields {
  private static final List<String> YES_NO = List.of("no", "yes");

  private final Words words;
  private final SharedTables tables;
  private final FormFields fields;
  private final String unit;

  /**
   * Controls of one form.
   *
   * @param lengths the unit meant where none is typed
   */
  SheetFields(Words words, SharedTables tables, FormFields fields, Unit lengths) {
    this.words = words;
    this.tables = tables;
    this.fields = fields;
    this.unit = lengths.sign();
  }

  FormFields form() {
    return fields;
  }

  TypedField plain(String field) {
    return typed(field, "");
  }

  /** A length in the book's unit. */
  TypedField length(String field) {
    return typed(field, unit);
  }

  TypedField mm(String field) {
    return typed(field, Unit.MM.sign());
  }

  private TypedField typed(String field, String sign) {
    return labelled(field, words.say("desk.decide.field." + field), sign);
  }

  /** A length that goes by the name of what it measures. */
  TypedField named(String field, String sayKey) {
    return labelled(field, words.say(sayKey), unit);
  }

  /** A number of a family of fields. */
  TypedField number(String field, String sayKey, String sign) {
    return labelled(field, words.say(sayKey), sign);
  }

  private TypedField labelled(String field, String says, String sign) {
    String label = sign.isEmpty() ? says : words.say("desk.decide.with-unit", says, sign);
    return new TypedField(words, label, "", fields.field(field));
  }

  PickedField picked(String field, List<String> keys, Function<String, String> name) {
    return picked(field, "desk.decide.field." + field, keys, name);
  }

  PickedField picked(
      String field, String sayKey, List<String> keys, Function<String, String> name) {
    return new PickedField(words, words.say(sayKey), keys, name, fields.field(field));
  }

  PickedField yesNo(String field) {
    return picked(
        field, YES_NO, key -> words.say(key.equals("yes") ? "desk.common.yes" : "desk.common.no"));
  }

  PickedField machine(String field) {
    return picked(
        field,
        "desk.decide.field.machine-kind",
        List.of(MachineKind.values()).stream().map(MachineKind::key).toList(),
        key -> key.isEmpty() ? "" : words.say("common.choice." + key));
  }

  PickedField stitch(String field) {
    return picked(
        field, tables.stitchTypes().stream().map(StitchType::key).toList(), this::stitchName);
  }

  /** A stitch of its own, or none: as the garment's seams. */
  PickedField ownStitch(String field) {
    List<String> keys = new ArrayList<>(List.of(""));
    tables.stitchTypes().forEach(each -> keys.add(each.key()));
    return picked(
        field,
        "desk.decide.field.own-stitch",
        keys,
        key -> key.isEmpty() ? words.say("desk.decide.sheet.as-seams") : stitchName(key));
  }

  private String stitchName(String key) {
    return rowName(tables.stitchTypes(), key, StitchType::key, StitchType::name);
  }

  PickedField cloth(String field, List<Cloth> cloths) {
    List<String> keys = new ArrayList<>(List.of(""));
    cloths.forEach(each -> keys.add(each.id().toString()));
    return picked(
        field,
        keys,
        key ->
            key.isEmpty()
                ? words.say("desk.decide.sheet.no-cloth")
                : rowName(cloths, key, each -> each.id().toString(), Cloth::name));
  }

  PickedField grain(String field) {
    return picked(
        field,
        List.of("course", "wale"),
        key -> key.isEmpty() ? "" : words.say("common.choice." + key));
  }

  static <T> String rowName(
      List<T> rows, String key, Function<T, String> keyOf, Function<T, String> nameOf) {
    return rows.stream()
        .filter(each -> keyOf.apply(each).equals(key))
        .map(nameOf)
        .findFirst()
        .orElse(key);
  }
}
