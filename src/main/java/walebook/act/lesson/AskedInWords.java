package walebook.act.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.record.Needle;
import walebook.record.PieceAsked;
import walebook.seam.StitchType;
import walebook.words.Words;

/**
 * How the settings of a plan's pieces read, in one line each: stitch, width and length, and of the
 * rest what is not the same in all of them.
 */
public final class AskedInWords {
  private final Words words;
  private final List<StitchType> stitches;
  private final List<PieceAsked> all;

  /** Words for the pieces of one plan; {@code stitches} as the reference table names them. */
  public AskedInWords(Words words, List<StitchType> stitches, List<PieceAsked> all) {
    this.words = words;
    this.stitches = List.copyOf(stitches);
    this.all = List.copyOf(all);
  }

  /** Such as {@code zigzag · width 2 · length 2.5}. */
  public String says(PieceAsked asked) {
    List<String> says = new ArrayList<>();
    StitchType type = type(asked.stitchType());
    says.add(type == null ? asked.stitchType() : type.name());
    Double width = asked.dialWidth();
    Double length = asked.dialLength();
    if (width != null && (type == null || type.hasWidth())) {
      says.add(words.say("desk.lessons.plan.width", Show.upTo(width, 2)));
    }
    if (length != null) {
      says.add(words.say("desk.lessons.plan.length", Show.upTo(length, 2)));
    }
    Needle needle = asked.needle();
    if (needle != null && differs(PieceAsked::needle)) {
      String point = words.say("common.choice." + needle.point().key());
      says.add(words.say("desk.today.next-needle", point, needle.nm()));
    }
    if (differs(PieceAsked::grain)) {
      says.add(words.say("desk.today.grain." + asked.grain().key()));
    }
    if (differs(PieceAsked::layers)) {
      says.add(words.say("desk.lessons.plan.layers", asked.layers()));
    }
    if (!asked.hemMethod().isBlank() && differs(PieceAsked::hemMethod)) {
      says.add(asked.hemMethod());
    }
    if (differs(each -> each.isStabilised() ? each.stabiliser() : "")) {
      says.add(
          asked.isStabilised() ? asked.stabiliser() : words.say("desk.lessons.plan.no-stabiliser"));
    }
    return String.join(" · ", says);
  }

  private boolean differs(Function<PieceAsked, @Nullable Object> what) {
    return all.stream().map(each -> String.valueOf(what.apply(each))).distinct().count() > 1;
  }

  private @Nullable StitchType type(String key) {
    return stitches.stream().filter(each -> each.key().equals(key)).findFirst().orElse(null);
  }
}
