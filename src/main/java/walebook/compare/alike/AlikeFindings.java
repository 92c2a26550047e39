package walebook.compare.alike;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.statistics.Interval;
import walebook.working.Message;

/** What a study of measuring says in plain words, and what it would have the class practise. */
public final class AlikeFindings {
  /**
   * With fewer degrees of freedom the 95 % interval of a standard deviation reaches beyond twice
   * its estimate: with 5 to {@code √(5 / χ²(5; 0.025)) = √(5 / 0.831) = 2.45}, with 8 to 1.92.
   */
  private static final int FEW_REPEATS = 8;

  private AlikeFindings() {}

  /**
   * The sentences on how far the class agrees; odd readings are told of first, the rest without.
   */
  public static List<Message> of(AlikeStudy all) {
    List<Message> says = new ArrayList<>();
    odd(all, says);
    AlikeStudy study = all.told();
    int people = study.people().size();
    Double one = study.repeatabilityLimit();
    Double two = study.reproducibilityLimit();
    if (two != null && people > 1) {
      says.add(Message.of("compare.alike.two-of-us", points(two)));
      Double with = all.reproducibilityLimit();
      if (!all.odd().isEmpty() && with != null) {
        says.add(Message.of("compare.alike.two-of-us-with", points(with)));
      }
    } else if (people < 2) {
      says.add(Message.of("compare.alike.one-person"));
    }
    if (one != null) {
      says.add(Message.of("compare.alike.same-hands", points(one)));
    } else if (study.agreement().oneWay().dfWithin() == 0) {
      says.add(Message.of("compare.alike.nobody-twice"));
    } else {
      says.add(Message.of("compare.alike.all-same"));
    }
    if (one != null) {
      limits(study, says);
    }
    if (study.agreement().clamped() && one != null) {
      says.add(Message.of("compare.alike.no-between"));
    }
    study.people().forEach(person -> person(person, says));
    if (people < 3 && people > 1) {
      says.add(Message.of("compare.alike.few-people"));
    }
    if (study.mixedCycles()) {
      says.add(Message.of("compare.alike.cycles"));
    }
    says.add(
        Message.of("compare.alike.counted", count(study.readings()), count(study.people().size())));
    if (study.setAside() > 0) {
      says.add(Message.of("compare.alike.aside", count(study.setAside())));
    }
    return List.copyOf(says);
  }

  /** A slip of the pen makes everybody's limit, so it is told first. */
  private static void odd(AlikeStudy study, List<Message> says) {
    if (!study.odd().isEmpty()) {
      says.add(Message.of("compare.alike.odd-here", odd(study)));
    }
  }

  /** The odd readings that nobody has looked at yet, with who read them; empty without any. */
  public static String odd(AlikeStudy study) {
    return study.people().stream()
        .filter(person -> !study.oddOf(person).isEmpty())
        .map(person -> person.who() + " " + oddOf(study, person))
        .collect(Collectors.joining(", "));
  }

  private static String oddOf(AlikeStudy study, Person person) {
    return study.oddOf(person).stream()
        .map(dot -> Show.percent(dot.stretch()))
        .collect(Collectors.joining(" / "));
  }

  /** What the limits themselves rest on. */
  private static void limits(AlikeStudy study, List<Message> says) {
    if (study.agreement().oneWay().dfWithin() < FEW_REPEATS) {
      says.add(Message.of("compare.alike.rough"));
    }
    List<String> scattering =
        study.people().stream()
            .filter(person -> person.scatter() == Person.Scatter.ODD)
            .map(Person::who)
            .toList();
    if (!scattering.isEmpty()) {
      says.add(Message.of("compare.alike.scattering", String.join(", ", scattering)));
    }
  }

  private static void person(Person person, List<Message> says) {
    double bias = person.member().bias();
    Interval interval = person.member().biasInterval();
    if (person.bias() == Person.Bias.NONE || (interval == null && person.member().h() == null)) {
      return;
    }
    boolean high = bias > 0;
    String by = points(Math.abs(bias));
    if (interval == null) {
      says.add(
          high
              ? Message.of("compare.alike.odd-high", person.who(), by)
              : Message.of("compare.alike.odd-low", person.who(), by));
      return;
    }
    double near = Math.min(Math.abs(interval.low()), Math.abs(interval.high()));
    double far = Math.max(Math.abs(interval.low()), Math.abs(interval.high()));
    // An h can be odd while the interval, from repeats alone, still reaches across none.
    boolean across = interval.contains(0);
    String least = across ? points(-near) : points(near);
    says.add(
        high
            ? Message.of("compare.alike.reads-high", person.who(), by, least, points(far))
            : Message.of("compare.alike.reads-low", person.who(), by, least, points(far)));
  }

  /**
   * What to practise: a high k asks for one's own readings again, a high h for the way of pulling
   * and the rule's zero. Rules of ours, after what ASTM E691 makes of h and k. Odd readings that
   * nobody has looked at yet blame nobody: they are looked at first, and the rest is told of.
   */
  public static List<Message> practise(AlikeStudy all) {
    List<Message> says = new ArrayList<>();
    for (Person person : all.people()) {
      if (!all.oddOf(person).isEmpty()) {
        says.add(Message.of("compare.alike.practise-look", person.who(), oddOf(all, person)));
      }
    }
    AlikeStudy study = all.told();
    for (Person person : study.people()) {
      if (person.scatter() == Person.Scatter.ODD) {
        says.add(
            Message.of(
                "compare.alike.practise-own",
                person.who(),
                number(person.member().k()),
                number(person.member().criticalK())));
      }
      if (person.bias() == Person.Bias.ODD) {
        says.add(
            person.member().bias() > 0
                ? Message.of("compare.alike.practise-softer", person.who())
                : Message.of("compare.alike.practise-harder", person.who()));
      }
    }
    List<String> off =
        study.people().stream()
            .filter(person -> person.bias() == Person.Bias.OFF)
            .map(Person::who)
            .toList();
    if (!off.isEmpty()) {
      says.add(Message.of("compare.alike.practise-together", String.join(", ", off)));
    }
    if (study.agreement().oneWay().dfWithin() == 0) {
      says.add(Message.of("compare.alike.practise-twice"));
    } else if (says.isEmpty() && study.people().size() > 2) {
      says.add(Message.of("compare.alike.practise-nothing"));
    }
    return List.copyOf(says);
  }

  private static String number(@Nullable Double value) {
    return value == null ? "–" : Show.fixed(value, 2);
  }

  private static String points(double value) {
    return Show.fixed(value, 1);
  }

  private static String count(int number) {
    return String.valueOf(number);
  }
}
