package walebook.act.piece;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.cloth.FabricKind;
import walebook.compare.ClothStretch;
import walebook.quantity.Show;
import walebook.record.Cloth;
import walebook.record.ClothUse;
import walebook.record.FaultSeen;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.Needle;
import walebook.record.Setting;
import walebook.seam.Factor;
import walebook.seam.Known;
import walebook.seam.StitchType;
import walebook.seam.Trait;
import walebook.tables.SharedTables;
import walebook.working.Message;

/** What is known of a piece, in the words of the table of faults. */
final class PieceTraits {
  private final PieceRoom room;
  private final SharedTables tables;

  PieceTraits(PieceRoom room, SharedTables tables) {
    this.room = room;
    this.tables = tables;
  }

  Map<Trait, Known> of(@Nullable ClothUse use, @Nullable Setting setting, FaultSeen seen) {
    Map<Trait, Known> traits = new EnumMap<>(Trait.class);
    choice(traits, Trait.SEEN, seen.when());
    choice(traits, Trait.PLACE, seen.place());
    if (setting != null) {
      setting(traits, setting);
    }
    if (use != null) {
      cloth(traits, use);
    }
    return traits;
  }

  private void setting(Map<Trait, Known> traits, Setting setting) {
    StitchType stitch = room.stitch(setting.stitchType());
    traits.put(Trait.STITCH, Known.word(setting.stitchType(), plain(setting.stitchName())));
    if (stitch != null) {
      traits.put(
          Trait.STITCH_GIVES,
          Known.word(stitch.stretches() ? "yes" : "no", plain(setting.stitchName())));
    }
    size(traits, Trait.WIDTH, setting.sewnWidthMm(), " mm");
    size(traits, Trait.LENGTH, setting.sewnLengthMm(), " mm");
    Needle needle = setting.needle();
    if (needle != null) {
      choice(traits, Trait.NEEDLE_POINT, needle.point());
      traits.put(Trait.NEEDLE_SIZE, Known.number(needle.nm(), "Nm " + needle.nm()));
    }
    if (!setting.thread().isBlank()) {
      traits.put(Trait.THREAD, Known.word(thread(setting.thread()), setting.thread()));
    }
    choice(traits, Trait.TENSION, setting.tension());
    choice(traits, Trait.PRESSURE, setting.pressure());
    size(traits, Trait.FEED, setting.differentialFeed(), "");
    boolean stay = setting.isStabilised();
    traits.put(
        Trait.STABILISER,
        stay
            ? Known.word("some", setting.stabiliser())
            : Known.word("none", Message.name("act.piece.none")));
    choice(traits, Trait.MACHINE, setting.machineKind());
  }

  private void cloth(Map<Trait, Known> traits, ClothUse use) {
    traits.put(Trait.LAYERS, Known.number(use.layers(), String.valueOf(use.layers())));
    Cloth cloth = room.cloth(use.clothId());
    if (cloth != null) {
      size(traits, Trait.ELASTANE, cloth.elastanePercent(), " %");
      size(traits, Trait.MASS, cloth.massGm2(), " g/m²");
      for (FabricKind each : tables.fabricKinds()) {
        if (each.key().equals(cloth.kind())) {
          traits.put(Trait.STRUCTURE, Known.word(each.structure(), each.name()));
        }
      }
    }
    Grain across = use.grain() == Grain.COURSE ? Grain.WALE : Grain.COURSE;
    ClothStretch along = room.stretch(use);
    ClothStretch other = room.stretch(use.clothId(), across);
    if (use.grain() != Grain.BIAS && along != null && other != null) {
      String shown = Show.percent(along.percent()) + " : " + Show.percent(other.percent());
      traits.put(
          Trait.STRETCHIEST, Known.word(along.percent() > other.percent() ? "yes" : "no", shown));
    }
  }

  /** What a piece's factors are set to, as it would be typed. */
  static Map<Factor, String> set(Setting setting) {
    Map<Factor, String> set = new EnumMap<>(Factor.class);
    Needle needle = setting.needle();
    put(set, Factor.STITCH, setting.stitchType());
    put(set, Factor.WIDTH, number(setting.dialWidth()));
    put(set, Factor.LENGTH, number(setting.dialLength()));
    put(set, Factor.NEEDLE_POINT, needle == null ? "" : needle.point().key());
    put(set, Factor.NEEDLE_SIZE, needle == null ? "" : String.valueOf(needle.nm()));
    put(set, Factor.THREAD, setting.thread());
    put(set, Factor.TENSION_TOP, setting.tension() == null ? "" : setting.tension().key());
    put(set, Factor.PRESSURE, setting.pressure() == null ? "" : setting.pressure().key());
    put(set, Factor.DIFFERENTIAL_FEED, number(setting.differentialFeed()));
    put(set, Factor.STABILISER, setting.stabiliser());
    return set;
  }

  private static void put(Map<Factor, String> set, Factor factor, String text) {
    if (!text.isBlank()) {
      set.put(factor, text);
    }
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : Show.upTo(value, 2);
  }

  private static void size(
      Map<Trait, Known> traits, Trait trait, @Nullable Double value, String unit) {
    if (value != null) {
      traits.put(trait, Known.number(value, Show.upTo(value, 2) + unit));
    }
  }

  private static void choice(Map<Trait, Known> traits, Trait trait, @Nullable Keyed choice) {
    if (choice != null) {
      traits.put(trait, Known.word(choice.key(), Message.name("common.choice." + choice.key())));
    }
  }

  private static String plain(String name) {
    return name.replaceAll(" \\(.*", "");
  }

  /** The fibre as the table of faults tells threads apart; any other word stands for itself. */
  private static String thread(String typed) {
    String text = typed.toLowerCase(Locale.ROOT);
    for (String each : new String[] {"textured", "cotton", "polyester"}) {
      if (text.contains(each)) {
        return each;
      }
    }
    return text;
  }
}
