package walebook.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;
import walebook.record.Pull;
import walebook.record.ResultLine;
import walebook.record.SeamEnd;
import walebook.record.SetTo;

/** An invented class put together piece by piece; a setting is a stitch width. */
public final class MadeClass {
  public static final UUID CLOTH = id("cloth");
  public static final UUID CLASS = id("class");

  private final List<ResultLine> lines = new ArrayList<>();
  private final Map<String, String> names = new HashMap<>();
  private final Set<UUID> setAside = new HashSet<>();
  private final Set<UUID> controls = new HashSet<>();
  private String machine = "4";
  private String stitch = "zigzag";
  private UUID cloth = CLOTH;
  private Grain grain = Grain.COURSE;

  public MadeClass() {
    names.put(CLOTH.toString(), "Grey jersey");
  }

  /** Up to sixty pieces of up to five students and four widths, with values of every sort. */
  static MadeClass ofAnySort(Random random) {
    MadeClass made = new MadeClass();
    int pieces = random.nextInt(60);
    int widths = 1 + random.nextInt(4);
    double share = random.nextInt(3) / 4.0;
    for (int i = 0; i < pieces; i++) {
      String who = "S" + random.nextInt(5);
      double width = 1 + random.nextInt(widths);
      // On no round number: a mean that lies between two is shown by what its last digit is.
      double value = 20 + random.nextInt(60) * 37 / 64.0;
      if (random.nextDouble() < share) {
        made.held(who, width, value);
      } else if (random.nextInt(3) > 0) {
        made.gave(who, width, value);
      } else if (random.nextBoolean()) {
        made.edge(who, width, value / 10);
      } else {
        made.grade(who, width, 1 + random.nextInt(5));
      }
      if (random.nextInt(8) == 0) {
        made.aside();
      }
    }
    return made;
  }

  static UUID id(String name) {
    return UUID.nameUUIDFromBytes(name.getBytes(java.nio.charset.StandardCharsets.UTF_8));
  }

  /** From here on pieces are sewn on another machine. */
  public MadeClass on(String number) {
    machine = number;
    return this;
  }

  /** From here on pieces are sewn on another cloth. */
  public MadeClass onCloth(String name) {
    cloth = id(name);
    names.put(cloth.toString(), name);
    return this;
  }

  /** From here on pieces are sewn along another grain. */
  public MadeClass along(Grain other) {
    grain = other;
    return this;
  }

  /** From here on pieces are sewn with another stitch. */
  public MadeClass with(String name) {
    stitch = name;
    return this;
  }

  public MadeClass edge(String student, double width, double... changes) {
    for (double each : changes) {
      add(student, width, null, null, each, null, null);
    }
    return this;
  }

  public MadeClass grade(String student, double width, int... grades) {
    for (int each : grades) {
      add(student, width, null, null, null, each, null);
    }
    return this;
  }

  public MadeClass gave(String student, double width, double... stretches) {
    for (double each : stretches) {
      add(student, width, SeamEnd.GAVE, each, null, null, null);
    }
    return this;
  }

  public MadeClass held(String student, double width, double... stretches) {
    for (double each : stretches) {
      add(student, width, SeamEnd.HELD, each, null, null, null);
    }
    return this;
  }

  public MadeClass minutes(String student, double width, double... minutes) {
    for (double each : minutes) {
      add(student, width, null, null, null, null, each);
    }
    return this;
  }

  /** The last piece is a control. */
  public MadeClass control() {
    controls.add(lines.get(lines.size() - 1).pieceId());
    return this;
  }

  /** The last piece's value is set aside. */
  public MadeClass aside() {
    setAside.add(lines.get(lines.size() - 1).pieceId());
    return this;
  }

  private void add(
      String student,
      double width,
      @Nullable SeamEnd end,
      @Nullable Double stretch,
      @Nullable Double edge,
      @Nullable Integer grade,
      @Nullable Double minutes) {
    names.put(id(student).toString(), student);
    names.put(id("m" + machine).toString(), machine);
    String code = String.format(java.util.Locale.ROOT, "P%05d", lines.size() + 1);
    lines.add(
        new ResultLine(
            id(code),
            code,
            CLASS,
            id(student),
            LocalDate.of(2026, 10, 5),
            new SetTo(
                cloth, grain, stitch, width, 2.5, null, "", null, null, "", id("m" + machine)),
            end,
            stretch,
            edge,
            grade,
            minutes,
            0));
  }

  public List<ResultLine> lines() {
    return List.copyOf(lines);
  }

  public Set<UUID> controls() {
    return Set.copyOf(controls);
  }

  public Set<UUID> setAside() {
    return Set.copyOf(setAside);
  }

  public Names names() {
    return Names.given(names);
  }

  /** A cloth that stretches by 100 %, so that a seam's share and its stretch are one number. */
  public static Map<UUID, Map<Grain, ClothStretch>> stretches() {
    Map<UUID, Map<Grain, ClothStretch>> all = new LinkedHashMap<>();
    all.put(CLOTH, Map.of(Grain.COURSE, new ClothStretch(6, 100, 0.5, Pull.FIRM)));
    return all;
  }

  public FairComparison ask(Outcome outcome, @Nullable Double matters) {
    return ask(FairQuestion.of(outcome, List.of(Factor.WIDTH)).mattering(matters), null);
  }

  public FairComparison ask(FairQuestion question, @Nullable MeasuringError measuring) {
    return CompareFairly.of(lines, question, stretches(), names(), setAside, measuring);
  }
}
