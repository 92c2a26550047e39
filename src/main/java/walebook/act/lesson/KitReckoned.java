package walebook.act.lesson;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.lesson.LessonPack;
import walebook.lesson.Material;
import walebook.lesson.PiecesPlan;
import walebook.lesson.Plan;
import walebook.lesson.PlanPieces;
import walebook.lesson.ReadingsPlan;
import walebook.record.Grain;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.ReadingLine;
import walebook.record.Student;
import walebook.record.Tier;
import walebook.working.Message;

/**
 * How much of a plan a kit is for. A pack lists what one student of the standard plan needs; who
 * sews fewer pieces needs less cloth and thread.
 *
 * @param times of a plan of pieces, how often one student sews each combination on average, the
 *     control among them, by its label; of a plan of readings, which share of the students measures
 *     each cloth, by its slot
 * @param says from what it is reckoned, in one sentence
 */
public record KitReckoned(Plan plan, Map<String, Double> times, Message says) {
  public KitReckoned {
    times = Map.copyOf(times);
  }

  /** As if everybody were on the standard plan. */
  public static KitReckoned standard(Plan plan) {
    return new KitReckoned(plan, whole(plan), Message.of("kit.reckoned.standard"));
  }

  private static Map<String, Double> whole(Plan plan) {
    return plan instanceof ReadingsPlan
        ? plan.cloths().stream().collect(Collectors.toMap(Plan.ClothSlot::slot, each -> 1.0))
        : ofTier(plan, Tier.STANDARD);
  }

  /**
   * From the tiers of a roster, before a plan is dealt; the standard plan where nobody is on it.
   */
  public static KitReckoned roster(Plan plan, List<Student> students) {
    if (students.isEmpty()) {
      return standard(plan);
    }
    Map<String, Double> times = new HashMap<>();
    for (Student each : students) {
      ofTier(plan, each.tier())
          .forEach((key, value) -> times.merge(key, value / students.size(), Double::sum));
    }
    return new KitReckoned(
        plan,
        times,
        Message.of(
            "kit.reckoned.roster",
            count(students, Tier.CORE),
            count(students, Tier.STANDARD),
            count(students, Tier.OWN)));
  }

  private static String count(List<Student> students, Tier tier) {
    return String.valueOf(students.stream().filter(each -> each.tier() == tier).count());
  }

  /** What a student of a tier takes on, each combination as often as any other. */
  private static Map<String, Double> ofTier(Plan plan, Tier tier) {
    double share = plan.tiers().of(tier).cells();
    Map<String, Double> times = new HashMap<>();
    if (plan instanceof PiecesPlan pieces) {
      double each = Math.min(1, share / pieces.cellCount());
      pieces.cells().forEach(cell -> times.put(cell.label(), each));
      times.put(PlanPieces.CONTROL, 1.0);
    } else if (plan instanceof ReadingsPlan readings) {
      Set<String> shared =
          readings.cells().stream().map(ReadingsPlan.Cell::slot).collect(Collectors.toSet());
      // Two grains may be of one cloth, so this is the most that can be needed; the pack lists each
      // cloth for the standard plan, whether a student comes to measure it or not.
      double usual = Math.min(shared.size(), plan.tiers().standard().cells());
      shared.forEach(slot -> times.put(slot, Math.min(1, share / usual)));
      if (readings.control() != null) {
        times.put(readings.control().slot(), 1.0);
      }
    }
    return times;
  }

  /**
   * From the plan that a lesson dealt to who is in its class; from the roster where it has none.
   */
  public static KitReckoned dealt(Book book, Lesson lesson, LessonPack pack) {
    List<Student> here = book.enrolments().studentsOf(lesson.classId());
    Set<UUID> ids = here.stream().map(Student::id).collect(Collectors.toSet());
    if (pack.plan() instanceof PiecesPlan plan) {
      List<PlannedPiece> pieces =
          book.lessons().planOf(lesson.id()).stream()
              .filter(each -> ids.contains(each.studentId()) && !each.isForGarment())
              .toList();
      return pieces.isEmpty() ? roster(plan, here) : dealt(plan, pieces);
    }
    List<ReadingLine> readings =
        book.readingPlans().of(lesson.id()).stream()
            .filter(each -> ids.contains(each.planned().studentId()))
            .toList();
    return readings.isEmpty() ? roster(pack.plan(), here) : measured(pack.plan(), readings);
  }

  private static KitReckoned dealt(PiecesPlan plan, List<PlannedPiece> pieces) {
    int students = distinct(pieces.stream().map(PlannedPiece::studentId).toList());
    Map<String, Double> times = new HashMap<>();
    pieces.forEach(each -> times.merge(each.cell(), 1.0 / students, Double::sum));
    return new KitReckoned(
        plan,
        times,
        Message.of("kit.reckoned.dealt", String.valueOf(students), String.valueOf(pieces.size())));
  }

  private static KitReckoned measured(Plan plan, List<ReadingLine> readings) {
    int students = distinct(readings.stream().map(each -> each.planned().studentId()).toList());
    Map<String, Set<UUID>> whose = new HashMap<>();
    readings.forEach(
        each ->
            whose
                .computeIfAbsent(each.planned().slot(), slot -> new HashSet<>())
                .add(each.planned().studentId()));
    Map<String, Double> times = new HashMap<>();
    whose.forEach((slot, all) -> times.put(slot, (double) all.size() / students));
    int pieces = whose.values().stream().mapToInt(Set::size).sum();
    return new KitReckoned(
        plan,
        times,
        Message.of(
            "kit.reckoned.dealt-readings", String.valueOf(students), String.valueOf(pieces)));
  }

  private static int distinct(Collection<UUID> students) {
    return new HashSet<>(students).size();
  }

  /**
   * How much of a material that is cut from a cloth one student needs on average, as a share of
   * what the pack lists: what goes with the pieces sewn on that cloth along that grain. What the
   * plan's pieces are not cut from, as the parts of a garment, everybody needs whole.
   */
  double share(Material material) {
    String slot = material.cloth();
    if (slot == null) {
      return 1;
    }
    if (!(plan instanceof PiecesPlan pieces)) {
      return times.getOrDefault(slot, 0.0);
    }
    Grain grain = material.grain();
    double usual = sum(pieces, whole(plan), slot, grain);
    if (usual > 0) {
      return sum(pieces, times, slot, grain) / usual;
    }
    double usualAlong = grain == null ? 0 : sum(pieces, whole(plan), null, grain);
    return usualAlong > 0 ? sum(pieces, times, null, grain) / usualAlong : 1;
  }

  /** How many test pieces one student sews on average; 0 where cloth is measured. */
  double sewn() {
    return plan instanceof PiecesPlan pieces ? sum(pieces, times, null, null) : 0;
  }

  /** How many one student of the standard plan sews, for whom a pack lists its materials. */
  double sewnOfStandard() {
    return plan instanceof PiecesPlan pieces ? sum(pieces, whole(plan), null, null) : 0;
  }

  /** Whether test pieces of the plan are cut from it, and not the parts of something else. */
  boolean isOfThePlan(Material material) {
    return plan instanceof PiecesPlan pieces
        && material.cloth() != null
        && material.alongMm() != null
        && material.acrossMm() != null
        && sum(pieces, whole(plan), material.cloth(), material.grain()) > 0;
  }

  /**
   * The share of what the pack lists of sewing thread; whole where everybody makes something beside
   * the plan's pieces.
   */
  double shareOfThread(List<Material> materials) {
    if (!(plan instanceof PiecesPlan pieces)) {
      return 1;
    }
    boolean more =
        materials.stream()
            .filter(each -> each.cloth() != null && each.grain() != null)
            .anyMatch(each -> sum(pieces, whole(plan), null, each.grain()) <= 0);
    return more ? 1 : sum(pieces, times, null, null) / sum(pieces, whole(plan), null, null);
  }

  private static double sum(
      PiecesPlan plan, Map<String, Double> times, @Nullable String slot, @Nullable Grain grain) {
    double sum = 0;
    for (PiecesPlan.Cell each : plan.cells()) {
      if (fits(plan.slotOf(each), each.settings().asked(1).grain(), slot, grain)) {
        sum += times.getOrDefault(each.label(), 0.0);
      }
    }
    Grain ofControl = plan.controlSettings().asked(1).grain();
    if (fits(plan.controlSlot(), ofControl, slot, grain)) {
      sum += times.getOrDefault(PlanPieces.CONTROL, 0.0);
    }
    return sum;
  }

  private static boolean fits(
      String has, Grain along, @Nullable String slot, @Nullable Grain grain) {
    return (slot == null || slot.equals(has)) && (grain == null || Objects.equals(grain, along));
  }
}
