package walebook.act.lesson;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import walebook.book.Book;
import walebook.lesson.LessonPack;
import walebook.lesson.PiecesPlan;
import walebook.lesson.PlanPieces;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.ReadingLine;

/** Which cloths of the room stand for a plan's, as the plan that was dealt has it. */
public final class PlannedCloths {
  private PlannedCloths() {}

  /** Those of a lesson, by the plan's slots; a slot that nothing was planned on is left out. */
  public static Map<String, UUID> of(Book book, Lesson lesson, LessonPack pack) {
    return pack.plan() instanceof PiecesPlan plan
        ? of(plan, book.lessons().planOf(lesson.id()))
        : ofReadings(book.readingPlans().of(lesson.id()));
  }

  static Map<String, UUID> ofReadings(List<ReadingLine> now) {
    Map<String, UUID> cloths = new HashMap<>();
    for (ReadingLine each : now) {
      UUID cloth = each.planned().clothId();
      if (cloth != null) {
        cloths.putIfAbsent(each.planned().slot(), cloth);
      }
    }
    return cloths;
  }

  static Map<String, UUID> of(PiecesPlan plan, List<PlannedPiece> now) {
    Map<String, String> slots = new HashMap<>();
    plan.cells().forEach(each -> slots.put(each.label(), plan.slotOf(each)));
    slots.put(PlanPieces.CONTROL, plan.controlSlot());
    Map<String, UUID> cloths = new HashMap<>();
    for (PlannedPiece each : now) {
      String slot = slots.get(each.cell());
      if (slot != null && each.clothId() != null) {
        cloths.putIfAbsent(slot, each.clothId());
      }
    }
    return cloths;
  }
}
