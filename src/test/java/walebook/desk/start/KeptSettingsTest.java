package walebook.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;

class KeptSettingsTest {
  @TempDir Path folder;

  @Test
  void whatWasKeptIsThereAtTheNextStart() throws IOException {
    Path file = folder.resolve("deep/settings.properties");
    Path first = Files.createFile(folder.resolve("a.walebook"));
    Path second = Files.createFile(folder.resolve("b.walebook"));
    KeptSettings settings = KeptSettings.at(file);
    settings.keep(Theme.DARK, new TextSize(150));
    settings.opened(first);
    settings.opened(second);
    settings.opened(first);
    KeptSettings again = KeptSettings.at(file);
    assertThat(again.theme()).isEqualTo(Theme.DARK);
    assertThat(again.textSize()).isEqualTo(new TextSize(150));
    assertThat(again.recentBooks()).containsExactly(first, second);
  }

  @Test
  void aBookThatIsGoneIsNotOffered() throws IOException {
    Path file = folder.resolve("settings.properties");
    Path book = Files.createFile(folder.resolve("a.walebook"));
    KeptSettings.at(file).opened(book);
    Files.delete(book);
    assertThat(KeptSettings.at(file).recentBooks()).isEmpty();
  }

  @Test
  void aSpoiltFileCountsAsEmpty() throws IOException {
    Path file = folder.resolve("settings.properties");
    Files.writeString(file, "text-size=enormous\ntheme=\\u00zz");
    KeptSettings settings = KeptSettings.at(file);
    assertThat(settings.theme()).isEqualTo(Theme.LIGHT);
    assertThat(settings.textSize()).isEqualTo(TextSize.USUAL);
  }
}
