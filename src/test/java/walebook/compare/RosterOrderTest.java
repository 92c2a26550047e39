package walebook.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.record.Student;
import walebook.record.Tier;

class RosterOrderTest {

  @Test
  void codesAreCountedAndNamesSortedAsPeopleSortThem() {
    List<Student> all =
        List.of(
            student("Zoe Kai", "S100"),
            student("Élise Mole", "S11"),
            student("eva Quay", "S2"),
            student("Eda Pier", "S9"));
    assertThat(sorted(all, false)).containsExactly("S2", "S9", "S11", "S100");
    assertThat(sorted(all, true)).containsExactly("S9", "S11", "S2", "S100");
  }

  private static Stream<String> sorted(List<Student> all, boolean names) {
    return all.stream().sorted(RosterOrder.of(names)).map(Student::alias);
  }

  private static Student student(String name, String alias) {
    return new Student(Ids.next(), name, alias, Tier.STANDARD, Classroom.FRESH);
  }
}
