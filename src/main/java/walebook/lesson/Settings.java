package walebook.lesson;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.Needle;
import walebook.record.NeedlePoint;
import walebook.record.PieceAsked;

/** Settings of a plan, in part or whole; values as the pack writes them, checked when read. */
public record Settings(Map<SettingKey, String> values) {
  /** What need_percent says when the seam is measured against the cloth. */
  public static final String AS_THE_CLOTH = "cloth";

  /** Settings a piece can't do without. */
  public static final List<SettingKey> NEEDED =
      List.of(
          SettingKey.CLOTH,
          SettingKey.GRAIN,
          SettingKey.LAYERS,
          SettingKey.METHOD,
          SettingKey.MACHINE,
          SettingKey.STITCH_TYPE);

  public Settings {
    values = Map.copyOf(values);
  }

  public @Nullable String get(SettingKey key) {
    return values.get(key);
  }

  /** These settings, and the base's where these say nothing. */
  public Settings over(Settings base) {
    EnumMap<SettingKey, String> both = new EnumMap<>(SettingKey.class);
    both.putAll(base.values);
    both.putAll(values);
    return new Settings(both);
  }

  /**
   * The whole as a planned piece holds it.
   *
   * @param readings how many pulls are asked for
   * @throws IllegalArgumentException when a needed setting is missing
   */
  public PieceAsked asked(int readings) {
    return new PieceAsked(
        Keyed.of(Grain.class, need(SettingKey.GRAIN)),
        Integer.parseInt(need(SettingKey.LAYERS)),
        Keyed.of(Method.class, need(SettingKey.METHOD)),
        Keyed.of(MachineKind.class, need(SettingKey.MACHINE)),
        need(SettingKey.STITCH_TYPE),
        number(SettingKey.WIDTH),
        number(SettingKey.LENGTH),
        needle(),
        values.getOrDefault(SettingKey.HEM_METHOD, ""),
        values.getOrDefault(SettingKey.STABILISER, ""),
        AS_THE_CLOTH.equals(get(SettingKey.NEED_PERCENT)) ? null : number(SettingKey.NEED_PERCENT),
        readings);
  }

  private @Nullable Needle needle() {
    String point = get(SettingKey.NEEDLE_POINT);
    String nm = get(SettingKey.NEEDLE_NM);
    return point == null || nm == null
        ? null
        : new Needle(Keyed.of(NeedlePoint.class, point), Integer.parseInt(nm));
  }

  private @Nullable Double number(SettingKey key) {
    String value = get(key);
    return value == null ? null : Double.valueOf(value);
  }

  private String need(SettingKey key) {
    String value = get(key);
    if (value == null) {
      throw new IllegalArgumentException(key.key() + " is not set");
    }
    return value;
  }
}
