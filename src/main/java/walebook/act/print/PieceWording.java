package walebook.act.print;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.compare.Names;
import walebook.paper.PieceSlip;
import walebook.quantity.Show;
import walebook.record.Grain;
import walebook.record.Machine;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.Needle;
import walebook.record.PieceAsked;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.Setting;
import walebook.record.TestPiece;
import walebook.seam.StitchType;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** A piece's settings in words, as asked for or, once it is logged, as sewn. */
final class PieceWording {
  private final Words words;
  private final SharedTables tables;
  private final Names names;
  private final List<Machine> machines;

  PieceWording(Words words, SharedTables tables, Book book) {
    this.words = words;
    this.tables = tables;
    this.names = Names.of(book, true);
    this.machines = book.machines().all();
  }

  PieceSlip slip(PieceLine line, String who) {
    List<String> what = new ArrayList<>();
    what.add(settings(line));
    what.add(cloth(line));
    what.removeIf(String::isEmpty);
    List<String> brief = new ArrayList<>(List.of(brief(line), cloth(line)));
    brief.removeIf(String::isEmpty);
    return new PieceSlip(
        line.code(),
        who,
        what,
        brief,
        machine(line),
        grain(line),
        grainWord(grain(line)),
        line.control());
  }

  String cloth(PieceLine line) {
    return line.clothId() == null ? "" : names.of(line.clothId());
  }

  String spoken(PieceLine line) {
    return PieceCode.spoken(line.code());
  }

  /** All settings in one, such as {@code zigzag, width 2.5, length 2; needle stretch 75}. */
  String settings(PieceLine line) {
    TestPiece logged = line.logged();
    PlannedPiece planned = line.planned();
    if (logged != null) {
      return settings(logged);
    }
    return planned == null ? "" : settings(planned.asked());
  }

  String settings(TestPiece piece) {
    Setting set = piece.setting();
    List<String> says = new ArrayList<>();
    says.add(stitch(set.stitchType(), set.dialWidth(), set.dialLength()));
    rest(says, set.method(), set.needle(), set.hemMethod(), set.stabiliser());
    if (set.differentialFeed() != null) {
      says.add(words.say("act.print.feed", Show.upTo(set.differentialFeed(), 2)));
    }
    return String.join("; ", says);
  }

  private String settings(PieceAsked asked) {
    List<String> says = new ArrayList<>();
    says.add(stitch(asked.stitchType(), asked.dialWidth(), asked.dialLength()));
    rest(says, asked.method(), asked.needle(), asked.hemMethod(), asked.stabiliser());
    return String.join("; ", says);
  }

  private void rest(
      List<String> says,
      Method method,
      @Nullable Needle needle,
      String hemMethod,
      String stabiliser) {
    if (method != Method.SEAM) {
      says.add(words.say("common.choice." + method.key()));
    }
    if (!hemMethod.isBlank()) {
      says.add(hemMethod);
    }
    if (Setting.isSomething(stabiliser)) {
      says.add(words.say("act.print.stabiliser", stabiliser));
    }
    if (needle != null) {
      String point = words.say("common.choice." + needle.point().key()).replaceAll(" \\(.*", "");
      says.add(words.say("act.print.needle", point, needle.nm()));
    }
  }

  /** The stitch with what is set on the dials. */
  String stitch(PieceLine line) {
    TestPiece logged = line.logged();
    PlannedPiece planned = line.planned();
    if (logged != null) {
      Setting set = logged.setting();
      return stitch(set.stitchType(), set.dialWidth(), set.dialLength());
    }
    return planned == null
        ? ""
        : stitch(
            planned.asked().stitchType(),
            planned.asked().dialWidth(),
            planned.asked().dialLength());
  }

  String stitch(String key, @Nullable Double width, @Nullable Double length) {
    StitchType type = type(key);
    String name = type == null ? key : type.name().replaceAll(" \\(.*", "");
    boolean narrow = type != null && !type.hasWidth();
    if (width == null || narrow) {
      return length == null
          ? name
          : words.say("act.print.stitch-length", name, Show.upTo(length, 2));
    }
    return length == null
        ? words.say("act.print.stitch-width", name, Show.upTo(width, 2))
        : words.say("act.print.stitch", name, Show.upTo(width, 2), Show.upTo(length, 2));
  }

  /** The stitch and its dials alone, as short as can be. */
  private String brief(PieceLine line) {
    TestPiece logged = line.logged();
    PlannedPiece planned = line.planned();
    if (logged != null) {
      Setting set = logged.setting();
      return brief(set.stitchType(), set.dialWidth(), set.dialLength());
    }
    return planned == null
        ? ""
        : brief(
            planned.asked().stitchType(),
            planned.asked().dialWidth(),
            planned.asked().dialLength());
  }

  private String brief(String key, @Nullable Double width, @Nullable Double length) {
    StitchType type = type(key);
    if (width == null || length == null || type == null || !type.hasWidth()) {
      return stitch(key, width, length);
    }
    String name = type.name().replaceAll(" \\(.*", "");
    return words.say("act.print.brief", name, Show.upTo(width, 2), Show.upTo(length, 2));
  }

  @Nullable StitchType type(String key) {
    return tables.stitchTypes().stream()
        .filter(each -> each.key().equals(key))
        .findFirst()
        .orElse(null);
  }

  /** The machine it was sewn on; a blank where that is not known yet. */
  private String machine(PieceLine line) {
    TestPiece logged = line.logged();
    for (Machine each : machines) {
      if (logged != null && each.id().equals(logged.setting().machineId())) {
        return words.say("act.print.machine", each.number());
      }
    }
    PlannedPiece planned = line.planned();
    MachineKind kind =
        logged != null
            ? logged.setting().machineKind()
            : planned == null ? MachineKind.SEWING : planned.asked().machineKind();
    return switch (kind) {
      case SEWING -> words.say("act.print.blank-sewing");
      case OVERLOCKER -> words.say("act.print.blank-overlocker");
      case COVERSTITCH -> words.say("act.print.blank-coverstitch");
    };
  }

  private static Grain grain(PieceLine line) {
    TestPiece logged = line.logged();
    PlannedPiece planned = line.planned();
    if (logged != null) {
      return logged.cloth().grain();
    }
    return planned == null ? Grain.COURSE : planned.asked().grain();
  }

  /** The seam's direction in one word, beside the arrow. */
  private String grainWord(Grain grain) {
    return switch (grain) {
      case WALE -> words.say("act.print.grain-wale");
      case COURSE -> words.say("act.print.grain-course");
      case BIAS -> words.say("act.print.grain-bias");
    };
  }

  String grainSays(Grain grain) {
    return words.say("sheet.grain." + grain.key());
  }
}
