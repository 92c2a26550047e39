package walebook.command;

import java.util.ArrayList;
import java.util.List;

/** All commands, in the order of the help. */
final class Jobs {
  private Jobs() {}

  static List<Job> all() {
    List<Job> all = new ArrayList<>();
    all.addAll(BookJobs.all());
    all.addAll(CareJobs.all());
    all.addAll(ClassJobs.all());
    all.addAll(PieceJobs.all());
    all.addAll(CauseJobs.all());
    all.addAll(ClothJobs.all());
    all.addAll(WashJobs.all());
    all.addAll(NoteJobs.all());
    all.addAll(CompareJobs.all());
    all.addAll(GarmentJobs.all());
    all.addAll(FairJobs.all());
    all.addAll(KnownJobs.all());
    all.addAll(OddJobs.all());
    all.addAll(AssessJobs.all());
    all.addAll(HistoryJobs.all());
    all.addAll(PrivacyJobs.all());
    all.addAll(ExportJobs.all());
    all.addAll(BringJobs.all());
    all.addAll(GatherJobs.all());
    all.addAll(PrintJobs.all());
    all.addAll(WorkJobs.all());
    all.addAll(PackJobs.all());
    all.addAll(LessonJobs.all());
    all.addAll(KitJobs.all());
    return all;
  }
}
