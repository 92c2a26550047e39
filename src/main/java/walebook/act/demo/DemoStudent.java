package walebook.act.demo;

import java.util.List;
import walebook.record.Tier;

/**
 * An invented student and the hands that the generator gives them.
 *
 * @param skill 0 a beginner to 1 at ease, in the first week
 * @param learns what each week adds to the skill
 * @param pullsHarder by how much of the stretch their pull differs from the class's, as a share
 * @param scatter of their readings, in points
 * @param machine number of the sewing machine they like to sit at
 */
record DemoStudent(
    String name,
    Tier tier,
    double skill,
    double learns,
    double pullsHarder,
    double scatter,
    int machine) {
  static final List<DemoStudent> ALL =
      List.of(
          new DemoStudent("Anouk Bréval", Tier.STANDARD, 0.35, 0.08, 0.02, 1.6, 1),
          new DemoStudent("Bashir Tamoun", Tier.STANDARD, 0.50, 0.06, 0.09, 2.0, 2),
          new DemoStudent("Çağla Demirsu", Tier.OWN, 0.70, 0.04, -0.01, 1.2, 3),
          new DemoStudent("Dilys Ropewalk", Tier.CORE, 0.15, 0.10, -0.08, 3.2, 4),
          new DemoStudent("Eoin Tidewell", Tier.STANDARD, 0.30, 0.07, 0.04, 2.4, 5),
          new DemoStudent("Fenna Kaaisma", Tier.STANDARD, 0.45, 0.07, -0.04, 1.5, 1),
          new DemoStudent("Giò Lanterni", Tier.CORE, 0.10, 0.09, 0.11, 3.5, 2),
          new DemoStudent("Håkon Brygvik", Tier.STANDARD, 0.40, 0.05, 0.00, 2.2, 3),
          new DemoStudent("Inês Marés", Tier.OWN, 0.75, 0.04, -0.03, 1.0, 4),
          new DemoStudent("Jadwiga Żaglowa", Tier.STANDARD, 0.55, 0.06, 0.01, 1.7, 5),
          new DemoStudent("Kofi Anchorsen", Tier.STANDARD, 0.25, 0.10, -0.10, 2.6, 1),
          new DemoStudent("Lúcia Farolim", Tier.STANDARD, 0.60, 0.05, 0.05, 1.4, 3));

  static final String TUTOR = "Mirela Havn";

  /** Skill in a week, from 0 for the first; never over 1. */
  double skillIn(int week) {
    return Math.min(1, skill + learns * week);
  }
}
