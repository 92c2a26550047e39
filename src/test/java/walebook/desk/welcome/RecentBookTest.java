package walebook.desk.welcome;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class RecentBookTest {
  private static List<String> folders(String... files) {
    return RecentBook.all(List.of(files).stream().map(Path::of).toList()).stream()
        .map(RecentBook::folder)
        .toList();
  }

  @Test
  void onlyBooksOfOneNameSayWhereTheyAre() {
    List<String> folders =
        folders("hall/monday.walebook", "stick/Monday.walebook", "hall/tuesday.walebook");
    assertThat(folders).containsExactly("hall", "stick", "");
  }

  @Test
  void aLongFolderIsShortenedInTheMiddle() {
    String long1 = "documents/teaching/harbour-hall/evening-classes/autumn-term";
    String long2 = "documents/teaching/harbour-hall/evening-classes/winter-term";
    List<String> folders = folders(long1 + "/a.walebook", long2 + "/a.walebook");
    assertThat(folders).allMatch(each -> each.length() <= 38).doesNotHaveDuplicates();
    assertThat(folders.get(0)).startsWith("documents").contains("…").endsWith("autumn-term");
  }

  @Test
  void foldersThatDifferInTheMiddleAloneStandWhole() {
    String ends = "/harbour-hall/evening-classes/stretch-sewing";
    List<String> folders =
        folders(
            "documents/teaching/autumn" + ends + "/a.walebook",
            "documents/teaching/winter" + ends + "/a.walebook");
    assertThat(folders)
        .containsExactly("documents/teaching/autumn" + ends, "documents/teaching/winter" + ends);
  }
}
