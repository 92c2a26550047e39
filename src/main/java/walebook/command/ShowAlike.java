package walebook.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.book.Book;
import walebook.compare.alike.AlikeFindings;
import walebook.compare.alike.AlikeStudy;
import walebook.compare.alike.MeasureAlike;
import walebook.compare.alike.Person;
import walebook.compare.alike.ReadingDot;
import walebook.quantity.Show;
import walebook.record.Cloth;
import walebook.record.Lesson;
import walebook.statistics.Member;
import walebook.words.Words;
import walebook.working.Message;

/** Whether a class measures alike, as text or for programs. */
final class ShowAlike {
  private final Words words;
  private final Book book;

  ShowAlike(Words words, Book book) {
    this.words = words;
    this.book = book;
  }

  String text(MeasureAlike found) {
    if (found.studies().isEmpty()) {
      return words.say("command.say.no-readings");
    }
    List<String> parts = new ArrayList<>();
    for (AlikeStudy study : found.studies()) {
      parts.add(
          title(study) + System.lineSeparator() + String.join(System.lineSeparator(), says(study)));
      parts.add(people(study.told()) + without(study));
    }
    return String.join(System.lineSeparator().repeat(2), parts);
  }

  private List<String> says(AlikeStudy study) {
    List<Message> all = new ArrayList<>(AlikeFindings.of(study));
    all.addAll(AlikeFindings.practise(study));
    return all.stream().map(words::say).toList();
  }

  private String title(AlikeStudy study) {
    String lesson = lesson(study.conditions().lessonId());
    String cloth = cloth(study.conditions().clothId());
    String grain = words.say("act.class.grain." + study.conditions().grain().key());
    return lesson.isEmpty() ? cloth + " · " + grain : cloth + " · " + grain + " · " + lesson;
  }

  private String cloth(UUID id) {
    Cloth found = book.cloths().find(id);
    return found == null ? "" : found.name();
  }

  private String lesson(@Nullable UUID id) {
    Lesson found = id == null ? null : book.lessons().find(id);
    return found == null ? "" : found.title();
  }

  private String without(AlikeStudy study) {
    return study.without() == null
        ? ""
        : System.lineSeparator() + words.say("command.say.alike-without", AlikeFindings.odd(study));
  }

  private String people(AlikeStudy study) {
    Table table =
        new Table(
            List.of(
                words.say("command.column.student"),
                words.say("command.column.readings"),
                words.say("command.column.mean"),
                words.say("command.column.bias"),
                words.say("command.column.limits"),
                "h",
                "k",
                words.say("command.column.critical-k")));
    for (Person each : study.people()) {
      Member member = each.member();
      table.row(
          List.of(
              each.who(),
              String.valueOf(each.readings().size()),
              Show.fixed(member.summary().mean(), 1),
              ShowFair.number(study.bias(each)),
              ShowFair.interval(member.biasInterval(), 1),
              two(member.h()),
              two(member.k()),
              two(member.criticalK())));
    }
    Double critical = study.criticalH();
    return critical == null
        ? table.toString()
        : table
            + System.lineSeparator()
            + words.say("command.say.critical-h", Show.fixed(critical, 2));
  }

  private static String two(@Nullable Double value) {
    return value == null ? "–" : Show.fixed(value, 2);
  }

  ObjectNode json(MeasureAlike found) {
    ObjectNode json = Json.object();
    json.put("repeatabilitySd", found.repeatabilitySd());
    json.put("degreesOfFreedom", found.degrees());
    ArrayNode studies = json.putArray("studies");
    found.studies().forEach(study -> study(studies.addObject(), study));
    return json;
  }

  private void study(ObjectNode node, AlikeStudy all) {
    AlikeStudy study = all.told();
    node.put("cloth", cloth(study.conditions().clothId()));
    node.put("lesson", lesson(study.conditions().lessonId()));
    Json.key(node, "grain", study.conditions().grain());
    Json.key(node, "fold", study.conditions().fold());
    Json.key(node, "pull", study.conditions().pull());
    node.put("readings", study.readings());
    node.put("setAside", study.setAside());
    node.put("repeatabilitySd", study.agreement().repeatabilitySd());
    node.put("reproducibilitySd", study.agreement().reproducibilitySd());
    node.put("repeatabilityLimit", study.repeatabilityLimit());
    node.put("reproducibilityLimit", study.reproducibilityLimit());
    node.put("reproducibilityLimitWithOdd", all.reproducibilityLimit());
    ArrayNode odd = node.putArray("oddUnseen");
    for (Person each : all.people()) {
      for (ReadingDot dot : all.oddOf(each)) {
        ObjectNode reading = odd.addObject();
        reading.put("student", each.who());
        reading.put("id", Objects.toString(dot.readingId()));
        reading.put("stretchPercent", dot.stretch());
      }
    }
    node.put("criticalH", study.criticalH());
    ArrayNode people = node.putArray("people");
    for (Person each : study.people()) {
      ObjectNode person = people.addObject();
      person.put("student", each.who());
      ArrayNode readings = person.putArray("readings");
      for (ReadingDot dot : each.readings()) {
        ObjectNode reading = readings.addObject();
        reading.put("id", Objects.toString(dot.readingId()));
        reading.put("stretchPercent", dot.stretch());
      }
      Member member = each.member();
      person.put("mean", member.summary().mean());
      person.put("bias", study.bias(each));
      FairJson.limits(person, "bias", member.biasInterval(), 1);
      person.put("h", member.h());
      person.put("k", member.k());
      person.put("criticalK", member.criticalK());
    }
    ArrayNode says = node.putArray("says");
    says(all).forEach(says::add);
  }
}
