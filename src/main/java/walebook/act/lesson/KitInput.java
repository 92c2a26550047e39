package walebook.act.lesson;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import walebook.lesson.LessonPack;
import walebook.lesson.Plan;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.ReadNumber;
import walebook.quantity.Unit;

/** Reads what is typed for a kit, every mistake at once. Keys are a plan's cloths or names. */
final class KitInput {
  static final int MOST_STUDENTS = 200;

  private final Set<String> keys = new TreeSet<>();
  private final Unit usual;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, Double> widths = new HashMap<>();
  private final Map<String, double[]> washes = new HashMap<>();
  private final Map<String, Double> prices = new HashMap<>();
  private final Set<String> unpriced = new HashSet<>();
  private int students;
  private double spare;
  private double margin;

  KitInput(LessonPack pack, KitTyped typed, Unit usual) {
    this.usual = usual;
    pack.plan().cloths().stream().map(Plan.ClothSlot::slot).forEach(keys::add);
    pack.needs().perStudent().forEach(each -> keys.add(each.what()));
    keys.add(KitTyped.THREAD);
    students(typed.students());
    spare = percent("spare", typed.spare());
    Answer<Double> read =
        ReadNumber.length(typed.margin().isBlank() ? "0" : typed.margin(), usual, field("margin"));
    problems.addAll(read.problems());
    margin = read.isGood() ? notNegative("margin", typed.margin(), read.value()) : 0;
    typed.widths().forEach(each -> pair("cloth-width", each, "a=150 cm", this::width));
    typed.washes().forEach(each -> pair("wash", each, "a=-5/-3", this::wash));
    typed.prices().forEach(each -> pair("price", each, "a=8.50", this::price));
  }

  List<Problem> problems() {
    return List.copyOf(problems);
  }

  int students() {
    return students;
  }

  /** How much more is taken of what is used up: 1.1 for a tenth more. */
  double more() {
    return 1 + spare / 100;
  }

  double sparePercent() {
    return spare;
  }

  double marginMm() {
    return margin;
  }

  @Nullable Double width(String key) {
    return widths.get(key);
  }

  /** Change along and across in per cent, or null. */
  double @Nullable [] wash(String key) {
    return washes.get(key);
  }

  @Nullable Double price(String key) {
    return prices.get(key);
  }

  Map<String, Double> prices() {
    return Map.copyOf(prices);
  }

  /** What was typed to have no price. */
  Set<String> unpriced() {
    return Set.copyOf(unpriced);
  }

  private static Place field(String name) {
    return Place.field(name);
  }

  private void students(String typed) {
    if (typed.isBlank()) {
      refuse("kit.how-many", "students", "", "12");
      return;
    }
    Answer<Integer> read = ReadNumber.whole(typed, field("students"));
    problems.addAll(read.problems());
    students = read.isGood() ? read.value() : 0;
    if (read.isGood() && students < 1) {
      refuse("kit.empty-class", "students", typed.strip(), "12");
    } else if (students > MOST_STUDENTS) {
      refuse("number.outside", "students", typed.strip(), "1 – " + MOST_STUDENTS);
    }
  }

  private double percent(String name, String typed) {
    if (typed.isBlank()) {
      return 0;
    }
    Answer<Double> read = ReadNumber.plain(typed, field(name));
    problems.addAll(read.problems());
    return read.isGood() ? notNegative(name, typed, read.value()) : 0;
  }

  private double notNegative(String name, String typed, double value) {
    if (value < 0) {
      refuse("number.negative", name, typed.strip(), "10");
      return 0;
    }
    return value;
  }

  private void pair(String name, String typed, String example, BiConsumer<String, String> take) {
    int end = typed.lastIndexOf('=');
    boolean empty = end == typed.length() - 1;
    if (end < 1 || (empty && !name.equals("price"))) {
      refuse("kit.key-and-value", name, typed.strip(), example);
      return;
    }
    String key = typed.substring(0, end).strip().toLowerCase(Locale.ROOT);
    List<String> found =
        keys.stream().filter(each -> each.toLowerCase(Locale.ROOT).equals(key)).toList();
    if (found.isEmpty() && key.length() > 2) {
      found = keys.stream().filter(each -> each.toLowerCase(Locale.ROOT).startsWith(key)).toList();
    }
    if (found.size() == 1) {
      take.accept(found.get(0), typed.substring(end + 1).strip());
    } else {
      String code = found.isEmpty() ? "choice.unknown" : "choice.several";
      refuse(code, name, key, String.join("; ", found.isEmpty() ? keys : found));
    }
  }

  private void width(String key, String typed) {
    Answer<Double> read = ReadNumber.length(typed, usual, field("cloth-width"));
    problems.addAll(read.problems());
    if (read.isGood() && read.value() <= 0) {
      refuse("number.not-positive", "cloth-width", typed, "150 cm");
    } else if (read.isGood()) {
      widths.put(key, read.value());
    }
  }

  private void wash(String key, String typed) {
    String[] parts = typed.split("/", -1);
    double[] changes = new double[2];
    for (int i = 0; i < 2; i++) {
      Answer<Double> read =
          i < parts.length ? ReadNumber.plain(parts[i], field("wash")) : Answer.good(0.0);
      changes[i] = read.isGood() ? read.value() : 0;
      if (!read.isGood() || parts.length > 2) {
        refuse("number.not-a-number", "wash", typed, "-5/-3");
        return;
      }
      if (Math.abs(changes[i]) >= 100) {
        refuse("wash.change", "wash", typed, "−5");
        return;
      }
    }
    washes.put(key, changes);
  }

  private void price(String key, String typed) {
    if (typed.isEmpty()) {
      prices.remove(key);
      unpriced.add(key);
      return;
    }
    Answer<Double> read = ReadNumber.plain(typed, field("price"));
    problems.addAll(read.problems());
    if (read.isGood()) {
      prices.put(key, notNegative("price", typed, read.value()));
      unpriced.remove(key);
    }
  }

  private void refuse(String code, String name, String found, String wanted) {
    problems.add(Problem.refuse(code, field(name), found, wanted));
  }
}
