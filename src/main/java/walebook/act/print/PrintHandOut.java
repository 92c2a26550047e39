package walebook.act.print;

import java.util.UUID;
import walebook.act.lesson.ReadTaught;
import walebook.book.Book;
import walebook.lesson.LessonPack;
import walebook.lesson.ReadPack;
import walebook.paper.PaperSize;
import walebook.problem.Answer;
import walebook.words.Words;

/** Prints a lesson on one page, to be handed out. */
public final class PrintHandOut {
  private final Words words;

  public PrintHandOut(Words words) {
    this.words = words;
  }

  /** The hand-out of a pack. */
  public Answer<Printed> print(LessonPack pack, PaperSize size, PrintFile file) {
    return file.write(words, pages -> pages.handOut(size, pack));
  }

  /** The hand-out of a pack as a class took it up. */
  public Answer<Printed> print(Book book, UUID packId, PaperSize size, PrintFile file) {
    return new ReadTaught(book, new ReadPack())
        .pack(packId)
        .flatMap(pack -> print(pack, size, file));
  }
}
