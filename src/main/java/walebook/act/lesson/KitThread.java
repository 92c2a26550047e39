package walebook.act.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import walebook.kit.SeamToSew;
import walebook.kit.ThreadNeed;
import walebook.lesson.LessonPack;
import walebook.lesson.Material;
import walebook.lesson.PiecesPlan;
import walebook.lesson.PlanPieces;
import walebook.problem.Answer;
import walebook.quantity.Show;
import walebook.record.MachineKind;
import walebook.record.PieceAsked;
import walebook.seam.ThreadRatio;
import walebook.working.Message;
import walebook.working.Working;

/** The thread that the seams of a plan take, for one student on average. */
final class KitThread {
  /** Taken where a cloth's thickness is not known: a jersey's layer, common practice. */
  private static final double USUAL_LAYER_MM = 0.6;

  private static final double USUAL_STITCH_MM = 2.5;

  /** Taken for an overlocker whose width the plan does not set; common practice. */
  private static final double USUAL_OVEREDGE_MM = 5;

  /** Common practice 10 to 20 %. */
  private static final double WASTE_PERCENT = 15;

  private final LessonPack pack;
  private final PiecesPlan plan;
  private final Map<String, Double> times;
  private final Map<String, KitCloth> cloths;
  private final TreeSet<String> guessed = new TreeSet<>();

  private KitThread(
      LessonPack pack, PiecesPlan plan, Map<String, Double> times, Map<String, KitCloth> cloths) {
    this.pack = pack;
    this.plan = plan;
    this.times = times;
    this.cloths = cloths;
  }

  /**
   * The thread for one student, in m.
   *
   * @param times how often one student sews each combination on average, by its label
   * @param remarks takes what was guessed
   * @return refused when no seam is planned or a stitch's thread is not known
   */
  static Answer<Working> of(
      LessonPack pack,
      PiecesPlan plan,
      Map<String, Double> times,
      Map<String, KitCloth> cloths,
      List<ThreadRatio> ratios,
      List<Message> remarks) {
    KitThread thread = new KitThread(pack, plan, times, cloths);
    Answer<Working> worked = ThreadNeed.of(thread.seams(), WASTE_PERCENT, ratios);
    for (String slot : thread.guessed) {
      remarks.add(Message.of("kit.remark.thickness", slot, Show.mm(USUAL_LAYER_MM)));
    }
    return worked;
  }

  /** The control once, and every combination as often as a student sews it on average. */
  private List<SeamToSew> seams() {
    List<SeamToSew> seams = new ArrayList<>();
    for (PiecesPlan.Cell cell : plan.cells()) {
      double sewn = times.getOrDefault(cell.label(), 0.0);
      if (sewn > 0) {
        add(seams, cell.label(), plan.slotOf(cell), cell.settings().asked(1), sewn);
      }
    }
    double control = times.getOrDefault(PlanPieces.CONTROL, 0.0);
    if (control > 0) {
      PieceAsked asked = plan.controlSettings().asked(1);
      add(seams, PlanPieces.CONTROL, plan.controlSlot(), asked, control);
    }
    return seams;
  }

  private void add(
      List<SeamToSew> seams, String name, String slot, PieceAsked asked, double times) {
    double seam = seamMm(slot);
    if (seam <= 0) {
      return;
    }
    KitCloth cloth = cloths.getOrDefault(slot, KitCloth.UNKNOWN);
    Double layer = cloth.thicknessMm();
    if (layer == null) {
      guessed.add(cloth.name().isEmpty() ? slot : cloth.name());
    }
    Double length = asked.dialLength();
    Double width = asked.dialWidth();
    double usualWidth = asked.machineKind() == MachineKind.OVERLOCKER ? USUAL_OVEREDGE_MM : 0;
    seams.add(
        new SeamToSew(
            name,
            asked.stitchType(),
            asked.layers() * (layer == null ? USUAL_LAYER_MM : layer),
            length == null || length == 0 ? USUAL_STITCH_MM : length,
            width == null ? usualWidth : width,
            seam,
            times));
  }

  /** A seam runs the whole of the longest piece cut from its cloth. */
  private double seamMm(String slot) {
    double longest = 0;
    for (Material each : pack.needs().perStudent()) {
      Double along = each.alongMm();
      if (slot.equals(each.cloth()) && along != null) {
        longest = Math.max(longest, along);
      }
    }
    return longest;
  }
}
