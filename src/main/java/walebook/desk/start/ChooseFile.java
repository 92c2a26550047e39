package walebook.desk.start;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.PickFile;
import walebook.words.Words;

/** Asks for files with the system's own chooser, starting where the last one was. */
final class ChooseFile implements PickFile {
  private final Window owner;
  private final Words words;
  private final Supplier<List<Path>> books;
  private @Nullable File lastFolder;

  /**
   * Sets it up.
   *
   * @param books those opened last, the newest first: beside it one begins to look
   */
  ChooseFile(Window owner, Words words, Supplier<List<Path>> books) {
    this.owner = owner;
    this.words = words;
    this.books = books;
  }

  @Override
  public @Nullable Path open(Kind kind) {
    if (kind == Kind.FOLDER) {
      return folder();
    }
    return remembered(chooser(kind).showOpenDialog(owner));
  }

  @Override
  public @Nullable Path save(Kind kind, String name) {
    FileChooser chooser = chooser(kind);
    chooser.setInitialFileName(name);
    return remembered(chooser.showSaveDialog(owner));
  }

  private @Nullable Path folder() {
    DirectoryChooser chooser = new DirectoryChooser();
    File begin = begin();
    if (begin != null) {
      chooser.setInitialDirectory(begin);
    }
    File folder = chooser.showDialog(owner);
    if (folder != null) {
      lastFolder = folder;
    }
    return folder == null ? null : folder.toPath();
  }

  /**
   * The folder chosen from last, else that of the book opened last; null leaves it to the system.
   */
  private @Nullable File begin() {
    if (lastFolder != null && lastFolder.isDirectory()) {
      return lastFolder;
    }
    return books.get().stream()
        .map(book -> book.toFile().getParentFile())
        .filter(folder -> folder != null && folder.isDirectory())
        .findFirst()
        .orElse(null);
  }

  private FileChooser chooser(Kind kind) {
    FileChooser chooser = new FileChooser();
    File begin = begin();
    if (begin != null) {
      chooser.setInitialDirectory(begin);
    }
    chooser.getExtensionFilters().add(filter(kind));
    return chooser;
  }

  private FileChooser.ExtensionFilter filter(Kind kind) {
    return switch (kind) {
      case BOOK -> new FileChooser.ExtensionFilter(words.say("desk.start.kind.book"), "*.walebook");
      case WORKBOOK ->
          new FileChooser.ExtensionFilter(words.say("desk.start.kind.workbook"), "*.xlsx");
      case TABLE ->
          new FileChooser.ExtensionFilter(
              words.say("desk.start.kind.table"), "*.xlsx", "*.xlsm", "*.csv", "*.tsv", "*.txt");
      case PAPER -> new FileChooser.ExtensionFilter(words.say("desk.start.kind.paper"), "*.pdf");
      case PHOTO ->
          new FileChooser.ExtensionFilter(
              words.say("desk.start.kind.photo"), "*.jpg", "*.jpeg", "*.png");
      case PICTURE ->
          new FileChooser.ExtensionFilter(words.say("desk.start.kind.picture"), "*.png");
      case DRAWING ->
          new FileChooser.ExtensionFilter(words.say("desk.start.kind.picture"), "*.svg");
      case PACK, FOLDER ->
          new FileChooser.ExtensionFilter(words.say("desk.start.kind.pack"), "*.zip", "pack.yaml");
    };
  }

  private @Nullable Path remembered(@Nullable File file) {
    if (file == null) {
      return null;
    }
    lastFolder = file.getParentFile();
    return file.toPath();
  }
}
