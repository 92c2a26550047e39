package walebook.act.lesson;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import walebook.book.Book;
import walebook.lesson.LessonPack;
import walebook.lesson.PackBytes;
import walebook.lesson.ReadPack;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.TaughtPack;

/** Reads a pack as a class took it up, from the book, whatever became of its folder. */
public final class ReadTaught {
  private final Book book;
  private final ReadPack reader;

  public ReadTaught(Book book, ReadPack reader) {
    this.book = book;
    this.reader = reader;
  }

  /**
   * The pack, or why it can't be read: one kept by an older Walebook may miss what is asked now.
   */
  public Answer<LessonPack> pack(UUID packId) {
    TaughtPack kept = book.lessons().pack(packId);
    if (kept == null) {
      return Answer.bad(
          Problem.refuse("lesson.pack-missing", new Place.Whole(), packId.toString(), ""));
    }
    Map<String, byte[]> files = new HashMap<>(book.lessons().picturesOf(packId));
    files.put("pack.yaml", kept.packYaml().getBytes(StandardCharsets.UTF_8));
    files.put("lesson.md", kept.lessonMd().getBytes(StandardCharsets.UTF_8));
    return reader.read(new PackBytes(kept.name(), files));
  }
}
