package walebook.lesson;

import java.util.List;

/**
 * A lesson pack as read and found good.
 *
 * @param log what a student writes down, in the order of the hands
 * @param success what the program can check afterwards
 */
public record LessonPack(
    About about,
    Teaching teaching,
    Needs needs,
    List<LogField> log,
    MeasureAsked measure,
    Plan plan,
    List<Success> success,
    LessonText text,
    PackFiles files) {
  public LessonPack {
    log = List.copyOf(log);
    success = List.copyOf(success);
  }

  /** Folder name, title and length of the lesson; {@code version} is the author's numbering. */
  public record About(String name, String version, String title, String summary, int minutes) {}

  /**
   * What the tutor says and minds.
   *
   * @param steps headings of the lesson's text with their minutes, in order
   * @param access how everybody can take part
   * @param trouble what to say when it goes wrong
   * @param further a stretch goal; empty when there is none
   */
  public record Teaching(
      List<StepTime> steps,
      List<String> aims,
      List<PackCaution> cautions,
      List<String> access,
      List<Trouble> trouble,
      String further,
      List<Figure> figures) {
    public Teaching {
      steps = List.copyOf(steps);
      aims = List.copyOf(aims);
      cautions = List.copyOf(cautions);
      access = List.copyOf(access);
      trouble = List.copyOf(trouble);
      figures = List.copyOf(figures);
    }
  }

  /** Materials for one student, and what the room needs once. */
  public record Needs(List<Material> perStudent, List<String> forTheRoom) {
    public Needs {
      perStudent = List.copyOf(perStudent);
      forTheRoom = List.copyOf(forTheRoom);
    }
  }

  /** A step of the lesson and how long it takes. */
  public record StepTime(String heading, int minutes) {}

  /** A warning where the hazard is, in the pack's words. */
  public record PackCaution(String key, String says) {}

  /**
   * A fault or slip, by its key, and what to say to the student.
   *
   * @param steps headings of the steps at which it happens; empty when it may happen at any
   */
  public record Trouble(String fault, List<String> steps, String says) {
    public Trouble {
      steps = List.copyOf(steps);
    }

    public boolean happensAt(String heading) {
      return steps.isEmpty() || steps.contains(heading);
    }
  }

  /** A figure the lesson relies on, and where it comes from. */
  public record Figure(String says, String source) {}
}
