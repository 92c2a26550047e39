package walebook.act.lesson;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.lesson.LessonPack;
import walebook.lesson.PackPicture;
import walebook.record.Stamp;
import walebook.record.TaughtPack;

/** Keeps a pack in the book as it is now, so that a lesson stays readable when the pack changes. */
public final class KeepPack {
  private KeepPack() {}

  /** The kept pack's id; a pack of the same content is kept once. */
  public static UUID in(Book book, LessonPack pack, Stamp stamp) {
    TaughtPack known = book.lessons().packByHash(pack.files().contentHash());
    if (known != null) {
      return known.id();
    }
    TaughtPack kept =
        new TaughtPack(
            Ids.next(),
            pack.about().name(),
            pack.about().version(),
            pack.about().title(),
            pack.files().contentHash(),
            pack.files().packYaml(),
            pack.files().lessonMd(),
            stamp);
    Map<String, byte[]> pictures = new LinkedHashMap<>();
    for (PackPicture picture : pack.files().pictures()) {
      pictures.put(picture.fileName(), picture.content());
    }
    book.lessons().keepPack(kept, pictures);
    return kept.id();
  }
}
