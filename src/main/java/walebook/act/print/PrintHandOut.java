package walebook.act.print;

import java.util.HashMap;
import java.util.Map;
import walebook.act.lesson.PlannedCloths;
import walebook.act.lesson.ReadTaught;
import walebook.book.Book;
import walebook.lesson.LessonPack;
import walebook.lesson.ReadPack;
import walebook.paper.HandOutPaper;
import walebook.paper.PaperSize;
import walebook.problem.Answer;
import walebook.record.Cloth;
import walebook.record.Lesson;
import walebook.words.Words;

/** Prints a lesson on one page, to be handed out. */
public final class PrintHandOut {
  private final Words words;

  public PrintHandOut(Words words) {
    this.words = words;
  }

  /** The hand-out of a pack that no class took up. */
  public Answer<Printed> print(LessonPack pack, PaperSize size, PrintFile file) {
    return print(new HandOutPaper(pack, Map.of()), size, file);
  }

  /** The hand-out of a pack as a class took it up, with the cloths of its plan. */
  public Answer<Printed> print(Book book, Lesson lesson, PaperSize size, PrintFile file) {
    return new ReadTaught(book, new ReadPack())
        .pack(lesson.packId())
        .flatMap(pack -> print(new HandOutPaper(pack, cloths(book, lesson, pack)), size, file));
  }

  private Answer<Printed> print(HandOutPaper paper, PaperSize size, PrintFile file) {
    return file.write(words, pages -> pages.handOut(size, paper));
  }

  private static Map<String, String> cloths(Book book, Lesson lesson, LessonPack pack) {
    Map<String, String> names = new HashMap<>();
    PlannedCloths.of(book, lesson, pack)
        .forEach(
            (slot, id) -> {
              Cloth cloth = book.cloths().find(id);
              if (cloth != null) {
                names.put(slot, cloth.name());
              }
            });
    return names;
  }
}
