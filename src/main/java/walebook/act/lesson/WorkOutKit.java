package walebook.act.lesson;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.kit.ClothToBuy;
import walebook.kit.CutPiece;
import walebook.kit.Kit;
import walebook.kit.KitLine;
import walebook.kit.Roll;
import walebook.lesson.LessonPack;
import walebook.lesson.Material;
import walebook.lesson.PiecesPlan;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Grain;
import walebook.tables.SharedTables;
import walebook.working.Message;
import walebook.working.Working;

/** Works out what a class needs for a lesson, from what the pack says one student needs. */
public final class WorkOutKit {
  /** Cloth is sold by the 10 cm; common practice. */
  private static final double STEP_MM = 100;

  private final LessonPack pack;
  private final KitReckoned reckoned;
  private final Map<String, KitCloth> known;
  private final KitInput input;
  private final Unit shown;
  private final long seed;
  private final List<KitLine> lines = new ArrayList<>();
  private final List<ClothToBuy> cloths = new ArrayList<>();
  private final List<Kit.Cut> cuts = new ArrayList<>();
  private final List<Message> remarks = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  private WorkOutKit(
      LessonPack pack,
      KitReckoned reckoned,
      Map<String, KitCloth> known,
      KitInput input,
      Unit usual,
      long seed) {
    this.pack = pack;
    this.reckoned = reckoned;
    this.known = known;
    this.input = input;
    this.shown = shownIn(usual);
    this.seed = seed;
  }

  /** Works the kit out as if everybody were on the standard plan. */
  public static Answer<Kit> of(
      LessonPack pack,
      Map<String, KitCloth> known,
      KitTyped typed,
      SharedTables tables,
      Unit usual,
      long seed) {
    return of(pack, KitReckoned.standard(pack.plan()), known, typed, tables, usual, seed);
  }

  /**
   * Works the kit out.
   *
   * @param reckoned how much of the plan it is for
   * @param known of the cloths that stand for the plan's, by slot; what is typed outranks it
   * @param usual the unit meant for a length without one
   * @param seed the same seed lays the same cutting plans
   */
  public static Answer<Kit> of(
      LessonPack pack,
      KitReckoned reckoned,
      Map<String, KitCloth> known,
      KitTyped typed,
      SharedTables tables,
      Unit usual,
      long seed) {
    KitInput input = new KitInput(pack, typed, usual);
    if (!input.problems().isEmpty()) {
      return Answer.bad(input.problems());
    }
    return new WorkOutKit(pack, reckoned, Map.copyOf(known), input, usual, seed).work(tables);
  }

  /** The unit cloth is spoken of in: nobody asks in a shop for so many millimetres of it. */
  public static Unit shownIn(Unit usual) {
    return usual == Unit.MM ? Unit.CM : usual;
  }

  private Answer<Kit> work(SharedTables tables) {
    Map<String, List<Part>> cut = new LinkedHashMap<>();
    List<Material> threads = new ArrayList<>();
    List<Material> others = new ArrayList<>();
    remarks.add(reckoned.says());
    for (Material each : pack.needs().perStudent()) {
      Double along = each.alongMm();
      Double across = each.acrossMm();
      if (reckoned.share(each) <= 0) {
        // A cloth that nobody was dealt is not bought.
        continue;
      }
      if (along != null && across != null) {
        String cloth = each.cloth();
        cut.computeIfAbsent(cloth == null ? each.what() : cloth, key -> new ArrayList<>())
            .add(new Part(piece(each, along, across), count(each)));
      } else if (each.threadM() != null) {
        threads.add(each);
      } else {
        others.add(each);
      }
    }
    cutForSewn();
    if (cut.isEmpty()) {
      remarks.add(Message.of("kit.remark.nothing-cut"));
    }
    cut.forEach(this::cloth);
    Working thread = seams(tables);
    thread(thread == null ? 0 : thread.value(), threads);
    others.forEach(this::other);
    return problems.isEmpty()
        ? Answer.good(
            new Kit(
                pack.about().title(),
                input.students(),
                input.sparePercent(),
                lines,
                cloths,
                cuts,
                thread,
                remarks))
        : Answer.bad(problems);
  }

  /** More is cut than sewn: why stands beside it, or somebody counts and wonders. */
  private void cutForSewn() {
    List<Material> cut = pack.needs().perStudent().stream().filter(reckoned::isOfThePlan).toList();
    if (cut.isEmpty()) {
      return;
    }
    double listed = cut.stream().mapToDouble(WorkOutKit::listed).sum();
    remarks.add(
        Message.of(
            "kit.remark.cut-for-sewn",
            String.valueOf(cut.stream().mapToInt(this::forClass).sum()),
            Show.upTo(reckoned.sewn() * input.students(), 0),
            Show.upTo(reckoned.sewnOfStandard(), 0),
            Show.upTo(listed, 1),
            Show.percent(input.sparePercent())));
  }

  /** The grain says which way the long side lies; a piece without one may be turned. */
  private CutPiece piece(Material material, double alongMm, double acrossMm) {
    int count = forClass(material);
    double longer = Math.max(alongMm, acrossMm);
    double shorter = Math.min(alongMm, acrossMm);
    Grain grain = material.grain();
    if (grain == null) {
      return new CutPiece(material.what(), count, shorter, longer, true);
    }
    return switch (grain) {
      case WALE -> new CutPiece(material.what(), count, shorter, longer, false);
      case COURSE -> new CutPiece(material.what(), count, longer, shorter, false);
      case BIAS -> {
        remarks.add(Message.of("kit.remark.bias", material.what()));
        double side = (longer + shorter) / Math.sqrt(2);
        yield new CutPiece(material.what(), count, side, side, false);
      }
    };
  }

  /** Pieces to cut and how many of them one student gets. */
  private record Part(CutPiece piece, double each) {}

  /** For one student on average, by how much of the plan each takes on. */
  private double count(Material material) {
    return listed(material) * reckoned.share(material);
  }

  private static double listed(Material material) {
    Double count = material.count();
    return count == null ? 1 : count;
  }

  private int forClass(Material material) {
    return (int) Math.ceil(count(material) * input.students() * input.more() - 1e-9);
  }

  private void cloth(String key, List<Part> parts) {
    List<CutPiece> pieces = parts.stream().map(Part::piece).toList();
    KitCloth cloth = known.getOrDefault(key, KitCloth.UNKNOWN);
    String name = cloth.name().isEmpty() ? named(key) : cloth.name();
    cuts.add(new Kit.Cut(name, pieces));
    Double typed = input.width(key);
    Double width = typed == null ? cloth.widthMm() : typed;
    if (width == null) {
      remarks.add(Message.of("kit.remark.width-unknown", name));
      parts.forEach(this::pieces);
      return;
    }
    double[] wash = input.wash(key);
    double along = wash == null ? orNought(cloth.alongPercent()) : wash[0];
    double across = wash == null ? orNought(cloth.acrossPercent()) : wash[1];
    Roll roll = new Roll(width, input.marginMm(), along, across, STEP_MM);
    Answer<ClothToBuy> found = ClothToBuy.of(name, pieces, roll, seed);
    found.problems().forEach(each -> problems.add(atCloth(each, key)));
    if (found.isGood()) {
      ClothToBuy buy = found.value();
      cloths.add(buy);
      double metres = buy.buyMm() / Unit.METRE.inBase();
      lines.add(
          new KitLine(
              KitLine.Kind.CLOTH,
              Message.of("kit.line.cloth", name, Show.length(width, shown)),
              metres / input.students(),
              metres,
              Unit.METRE,
              input.price(key)));
    }
  }

  /** What is wrong with one of the plan's cloths is said of that cloth. */
  private Problem atCloth(Problem problem, String key) {
    boolean isSlot = pack.plan().cloths().stream().anyMatch(each -> each.slot().equals(key));
    return isSlot && problem.place().equals(Place.field("cloth-width"))
        ? new Problem(
            problem.code(),
            Place.field("width-" + key),
            problem.found(),
            problem.wanted(),
            problem.weight())
        : problem;
  }

  private static double orNought(@Nullable Double value) {
    return value == null ? 0 : value;
  }

  private String named(String key) {
    return pack.plan().cloths().stream()
        .filter(each -> each.slot().equals(key))
        .map(each -> each.says())
        .findFirst()
        .orElse(key);
  }

  /** A price is for a metre, so what is only counted has none. */
  private void pieces(Part part) {
    CutPiece piece = part.piece();
    lines.add(
        new KitLine(
            KitLine.Kind.PIECES,
            Message.of(
                "kit.line.pieces",
                piece.name(),
                Show.length(piece.acrossMm(), shown),
                Show.length(piece.alongMm(), shown)),
            part.each(),
            (double) piece.count(),
            Unit.COUNT,
            null));
  }

  /** What the plan's seams take, for one student; null when it can't be told. */
  private @Nullable Working seams(SharedTables tables) {
    if (!(pack.plan() instanceof PiecesPlan plan)) {
      return null;
    }
    Map<String, KitCloth> cloths = new HashMap<>(known);
    plan.cloths()
        .forEach(each -> cloths.putIfAbsent(each.slot(), KitCloth.UNKNOWN.named(each.says())));
    Answer<Working> worked =
        KitThread.of(pack, plan, reckoned.times(), cloths, tables.seamRows().ratios(), remarks);
    if (!worked.isGood()) {
      worked.problems().stream()
          .filter(each -> each.code().equals("thread.unknown-stitch"))
          .forEach(each -> remarks.add(Message.of("kit.remark.thread-unknown", each.found())));
      return null;
    }
    return worked.value();
  }

  /**
   * Thread stands on the list once: as the pack names it, with what the pack allows for trials, and
   * by its seams alone where the pack names none.
   *
   * @param seamsM what the plan's seams take, m for one student
   */
  private void thread(double seamsM, List<Material> threads) {
    if (threads.isEmpty() && seamsM > 0) {
      thread(Message.of("kit.line.thread"), seamsM, null);
    }
    double all = threads.stream().mapToDouble(this::threadM).sum();
    double more = Math.max(0, seamsM - all);
    for (Material each : threads) {
      double metres = threadM(each) + more;
      if (more > 0) {
        String need = Show.upTo(metres, 1);
        remarks.add(
            Message.of("kit.remark.more-thread", each.what(), Show.upTo(threadM(each), 1), need));
      }
      thread(Message.of("kit.line.named", each.what()), metres, input.price(each.what()));
      more = 0;
    }
  }

  private double threadM(Material material) {
    Double metres = material.threadM();
    return metres == null ? 0 : metres * reckoned.shareOfThread(pack.needs().perStudent());
  }

  private void thread(Message what, double metres, @Nullable Double price) {
    lines.add(
        new KitLine(
            KitLine.Kind.THREAD,
            what,
            metres,
            metres * input.students() * input.more(),
            Unit.METRE,
            price == null ? input.price(KitTyped.THREAD) : price));
  }

  private void other(Material material) {
    Double count = material.count();
    Double along = material.alongMm();
    Message what = Message.of("kit.line.named", material.what());
    Double price = input.price(material.what());
    if (along != null) {
      double metres = along * (count == null ? 1 : count) / Unit.METRE.inBase();
      lines.add(
          new KitLine(
              KitLine.Kind.LENGTH,
              what,
              metres,
              metres * input.students() * input.more(),
              Unit.METRE,
              price));
      return;
    }
    Double all = count == null ? null : Math.ceil(count * input.students() - 1e-9);
    lines.add(new KitLine(KitLine.Kind.COUNTED, what, count, all, Unit.COUNT, price));
  }
}
