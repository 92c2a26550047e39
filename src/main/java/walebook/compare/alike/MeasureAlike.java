package walebook.compare.alike;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.compare.Names;
import walebook.record.ClothReading;
import walebook.statistics.Agreement;
import walebook.statistics.Sample;

/**
 * Everything that a class's readings say of how alike it measures.
 *
 * @param studies one for each cloth and way of measuring that anybody read, those with most people
 *     first
 * @param repeatabilitySd pooled over all studies in which somebody read twice, points of stretch;
 *     null when nobody did, or when all repeats were equal
 * @param degrees degrees of freedom behind it
 * @param nameless readings left out, since nobody is known to have taken them
 */
public record MeasureAlike(
    List<AlikeStudy> studies, @Nullable Double repeatabilitySd, int degrees, int nameless) {
  public MeasureAlike {
    studies = List.copyOf(studies);
  }

  /**
   * Sorts readings into studies.
   *
   * @param setAside readings that the tutor set aside
   * @param confidence of the biases' intervals, all of a study together
   */
  public static MeasureAlike of(
      List<ClothReading> readings, Names names, Set<UUID> setAside, double confidence) {
    return of(readings, names, setAside, Set.of(), confidence);
  }

  /**
   * Sorts readings into studies.
   *
   * @param setAside readings that the tutor set aside
   * @param lookedAt readings that count, and are odd no more since the tutor looked at them
   * @param confidence of the biases' intervals, all of a study together
   */
  public static MeasureAlike of(
      List<ClothReading> readings,
      Names names,
      Set<UUID> setAside,
      Set<UUID> lookedAt,
      double confidence) {
    Map<Conditions, List<ClothReading>> sorted = new LinkedHashMap<>();
    Map<Conditions, Integer> aside = new HashMap<>();
    int nameless = 0;
    for (ClothReading each : readings) {
      if (each.measuredBy() == null) {
        nameless++;
        continue;
      }
      Conditions conditions = Conditions.of(each);
      if (setAside.contains(each.id())) {
        aside.merge(conditions, 1, Integer::sum);
      } else {
        sorted.computeIfAbsent(conditions, key -> new ArrayList<>()).add(each);
      }
    }
    List<AlikeStudy> studies = new ArrayList<>();
    sorted.forEach(
        (conditions, list) ->
            studies.add(
                study(
                    conditions,
                    list,
                    names,
                    aside.getOrDefault(conditions, 0),
                    odd(list, lookedAt),
                    confidence)));
    studies.sort(
        Comparator.comparingInt((AlikeStudy study) -> -study.people().size())
            .thenComparing(study -> names.of(study.conditions().clothId()))
            .thenComparing(study -> study.conditions().grain()));
    return pooled(studies, nameless);
  }

  private static MeasureAlike pooled(List<AlikeStudy> studies, int nameless) {
    double[] squares =
        studies.stream().mapToDouble(s -> s.agreement().oneWay().ssWithin()).toArray();
    int degrees = studies.stream().mapToInt(s -> s.agreement().oneWay().dfWithin()).sum();
    Double sd = Repeatability.pooled(squares, degrees);
    return new MeasureAlike(studies, sd, degrees, nameless);
  }

  /**
   * Readings that look like a slip. Where more than half of what somebody read several times lies
   * far off, that is how they read, or how much their readings scatter.
   */
  private static Set<UUID> odd(List<ClothReading> readings, Set<UUID> lookedAt) {
    FarOff far = FarOff.of(readings.stream().map(ClothReading::stretchPercent).toList());
    Map<UUID, List<ClothReading>> byPerson =
        readings.stream().collect(Collectors.groupingBy(each -> requireNonNull(each.measuredBy())));
    Set<UUID> odd = new HashSet<>();
    for (List<ClothReading> own : byPerson.values()) {
      List<UUID> off =
          own.stream()
              .filter(each -> far.isFar(each.stretchPercent()))
              .map(ClothReading::id)
              .toList();
      if (own.size() == 1 || 2 * off.size() <= own.size()) {
        odd.addAll(off);
      }
    }
    odd.removeAll(lookedAt);
    return odd;
  }

  private static AlikeStudy study(
      Conditions conditions,
      List<ClothReading> readings,
      Names names,
      int setAside,
      Set<UUID> odd,
      double confidence) {
    Map<String, List<ClothReading>> byPerson = new TreeMap<>();
    for (ClothReading each : readings) {
      String who = String.valueOf(each.measuredBy());
      byPerson.computeIfAbsent(who, key -> new ArrayList<>()).add(each);
    }
    List<Sample> samples = new ArrayList<>();
    byPerson.forEach(
        (who, own) ->
            samples.add(new Sample(who, own.stream().map(ClothReading::stretchPercent).toList())));
    // Everybody's bias is looked at: the intervals are to hold for all of them at once.
    Agreement agreement = Agreement.of(samples, 1 - (1 - confidence) / samples.size());
    Double criticalH = agreement.criticalH();
    List<Person> people = new ArrayList<>();
    agreement
        .members()
        .forEach(
            member -> {
              List<ReadingDot> dots =
                  byPerson.getOrDefault(member.name(), List.of()).stream()
                      .map(r -> new ReadingDot(r.id(), r.stretchPercent(), r.cycle()))
                      .toList();
              String who = names.of(member.name());
              people.add(Person.of(UUID.fromString(member.name()), who, dots, member, criticalH));
            });
    people.sort(Comparator.comparing(Person::who).thenComparing(Person::studentId));
    boolean mixed = readings.stream().map(ClothReading::cycle).distinct().count() > 1;
    List<ClothReading> rest = readings.stream().filter(each -> !odd.contains(each.id())).toList();
    AlikeStudy without =
        odd.isEmpty() || rest.isEmpty()
            ? null
            : study(conditions, rest, names, setAside, Set.of(), confidence);
    return new AlikeStudy(conditions, people, agreement, criticalH, setAside, odd, without, mixed);
  }
}
