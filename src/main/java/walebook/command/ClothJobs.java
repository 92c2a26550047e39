package walebook.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.cloth.KeepCloth;
import walebook.act.cloth.LogClothReading;
import walebook.book.Book;
import walebook.compare.ClothStretch;
import walebook.compare.ReadingsThatCount;
import walebook.quantity.Show;
import walebook.record.Cloth;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.Lesson;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** Cloths and their readings. */
final class ClothJobs {
  private static final List<Option> CARD =
      List.of(
          Option.needed("cloth-name", "NAME", "command.cloth.name"),
          Option.of("cloth-kind", "KIND", "command.cloth.kind"),
          Option.of("fibre", "WORDS", "command.cloth.fibre"),
          Option.of("elastane", "PERCENT", "command.cloth.elastane"),
          Option.of("mass", "G/M2", "command.cloth.mass"),
          Option.of("cloth-width", "LENGTH", "command.cloth.width"),
          Option.of("thickness", "LENGTH", "command.cloth.thickness"),
          Option.of("frays", "YES|NO", "command.cloth.frays"),
          Option.of("sheds", "YES|NO", "command.cloth.sheds"),
          Option.of("ladders", "YES|NO", "command.cloth.ladders"),
          Option.of("curls", "YES|NO", "command.cloth.curls"),
          Option.of("needs-finishing", "YES|NO", "command.cloth.finishing"),
          Option.of("remark", "WORDS", "command.field.remark"));

  private static final List<Option> READING =
      List.of(
          Option.needed("grain", "GRAIN", "command.reading.grain"),
          Option.needed("gauge", "LENGTH", "command.reading.gauge"),
          Option.needed("stretched", "LENGTH", "command.reading.stretched"),
          Option.of("released", "LENGTH", "command.reading.released"),
          Option.of("rest", "SECONDS", "command.field.rest"),
          Option.of("fold", "FOLD", "command.field.fold"),
          Option.of("edge", "WHERE", "command.reading.edge"),
          Option.of("pull", "PULL", "command.field.pull"),
          Option.of("load", "GRAMS", "command.field.load"),
          Option.of("hold", "SECONDS", "command.field.hold"),
          Option.of("cycle", "NUMBER", "command.reading.cycle"),
          Option.of("measured-on", "DATE", "command.field.measured-on"),
          Option.of("remark", "WORDS", "command.field.remark"));

  private ClothJobs() {}

  static List<Job> all() {
    List<Option> add = new ArrayList<>(List.of(Job.BOOK, Job.SURE));
    add.addAll(CARD);
    List<Option> read =
        new ArrayList<>(
            List.of(
                Job.BOOK,
                Option.needed("cloth", "NAME", "command.field.cloth"),
                Job.CLASS,
                Job.STUDENT,
                Job.LESSON,
                Job.SURE));
    read.addAll(READING);
    return List.of(
        Job.shows("cloth list", "command.cloth.list", AtBook.open(ClothJobs::list), Job.BOOK),
        Job.shows(
            "cloth add",
            "command.cloth.add",
            AtBook.open(ClothJobs::add),
            add.toArray(new Option[0])),
        Job.shows(
            "cloth read",
            "command.cloth.read",
            AtBook.open(ClothJobs::read),
            read.toArray(new Option[0])));
  }

  private static Exit add(Typed typed, Terminal terminal, Book book) {
    Refused.unless(
        new KeepCloth(book, terminal.clock()).keep(null, typed.given(CARD), typed.has("sure")));
    return list(typed, terminal, book);
  }

  private static Exit list(Typed typed, Terminal terminal, Book book) {
    Map<UUID, Map<Grain, ClothStretch>> stretches = ReadingsThatCount.stretches(book);
    ArrayNode json = Json.array();
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.cloth"),
                terminal.say("command.column.kind"),
                terminal.say("command.column.fibre"),
                terminal.say("command.column.mass"),
                terminal.say("command.column.wale"),
                terminal.say("command.column.course"),
                terminal.say("command.column.readings")));
    for (Cloth each : book.cloths().all()) {
      Map<Grain, ClothStretch> known = stretches.getOrDefault(each.id(), Map.of());
      ClothStretch wale = known.get(Grain.WALE);
      ClothStretch course = known.get(Grain.COURSE);
      int readings = known.values().stream().mapToInt(ClothStretch::n).sum();
      Double mass = each.massGm2();
      table.row(
          List.of(
              each.name(),
              each.kind(),
              each.fibre(),
              mass == null ? "" : Show.upTo(mass, 0),
              text(wale),
              text(course),
              String.valueOf(readings)));
      ObjectNode node = json.addObject();
      node.put("name", each.name());
      node.put("kind", each.kind());
      node.put("fibre", each.fibre());
      node.put("elastanePercent", each.elastanePercent());
      node.put("massGm2", each.massGm2());
      node.put("thicknessMm", each.thicknessMm());
      node.set("waleStretch", stretch(wale));
      node.set("courseStretch", stretch(course));
      node.put("retired", each.retired());
    }
    terminal.out().println(typed.has("json") ? Json.write(json) : table.toString());
    return Exit.DONE;
  }

  private static String text(@Nullable ClothStretch stretch) {
    return stretch == null
        ? "–"
        : Show.fixed(stretch.percent(), 1) + " ± " + Show.fixed(2 * stretch.uncertainty(), 1);
  }

  private static @Nullable ObjectNode stretch(@Nullable ClothStretch stretch) {
    if (stretch == null) {
      return null;
    }
    ObjectNode node = Json.object();
    node.put("percent", stretch.percent());
    node.put("standardUncertainty", stretch.uncertainty());
    node.put("readings", stretch.n());
    Json.key(node, "pull", stretch.pull());
    return node;
  }

  private static Exit read(Typed typed, Terminal terminal, Book book) {
    Cloth cloth = Pick.cloth(typed.text("cloth", ""), book);
    if (cloth == null) {
      throw Refused.field("cloth", "field.needed", "", "");
    }
    boolean ofClass =
        typed.text("class") != null
            || typed.text("student") != null
            || typed.text("lesson") != null;
    SchoolClass in = ofClass ? Pick.schoolClass(typed, book) : null;
    Student student = in == null ? null : Pick.student(typed.text("student"), book, in);
    Lesson lesson = in == null ? null : Pick.lesson(typed.text("lesson"), book, in);
    ClothReading reading =
        Refused.unless(
            new LogClothReading(book, terminal.clock())
                .save(
                    new LogClothReading.Whose(
                        cloth.id(),
                        in == null ? null : in.id(),
                        lesson == null ? null : lesson.id(),
                        student == null ? null : student.id()),
                    typed.given(READING),
                    typed.has("sure")));
    if (typed.has("json")) {
      ObjectNode json = Json.object();
      json.put("cloth", cloth.name());
      Json.key(json, "grain", reading.grain());
      json.put("gaugeMm", reading.gaugeMm());
      json.put("stretchedMm", reading.stretchedMm());
      json.put("releasedMm", reading.releasedMm());
      json.put("stretchPercent", reading.stretchPercent());
      terminal.out().println(Json.write(json));
    } else {
      terminal
          .out()
          .println(
              terminal.say(
                  "command.say.reading",
                  cloth.name(),
                  reading.grain().key(),
                  Show.percent(reading.stretchPercent())));
    }
    return Exit.DONE;
  }
}
