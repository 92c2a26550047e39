package walebook.house;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Who may import whom: the house's plan, held against the compiled classes. */
class RoomsTest {
  /** What every room may lean on: the JDK and the null marks. */
  private static final List<String> EVERYWHERE =
      List.of("java.", "javax.xml.", "javax.imageio.", "org.jspecify.");

  /** For each room: our rooms it may import, then outside packages. */
  private static final Map<String, Allowed> ROOMS = new LinkedHashMap<>();

  private static JavaClasses classes;

  private record Allowed(Set<String> rooms, List<String> outside) {}

  private static void room(String name, String rooms, String... outside) {
    ROOMS.put(
        name,
        new Allowed(
            Arrays.stream(rooms.split(" ")).filter(r -> !r.isEmpty()).collect(Collectors.toSet()),
            List.of(outside)));
  }

  static {
    room("problem", "");
    room("quantity", "problem");
    room("working", "problem quantity");
    room("words", "problem working");
    room("cloth", "problem quantity working", "org.apache.commons.statistics.", "org.hipparchus.");
    room(
        "seam",
        "problem quantity working cloth",
        "org.apache.commons.statistics.",
        "org.hipparchus.");
    room("garment", "problem quantity working cloth seam");
    room("kit", "problem quantity working cloth seam garment");
    room("statistics", "", "org.hipparchus.", "org.apache.commons.statistics.");
    room("record", "problem quantity");
    room("tables", "problem quantity working cloth seam garment kit", "org.apache.commons.csv.");
    room(
        "lesson",
        "problem quantity working words record cloth seam garment kit statistics",
        "org.snakeyaml.engine.",
        "com.networknt.",
        "tools.jackson.",
        "com.fasterxml.jackson.annotation.",
        "org.commonmark.");
    room("book", "problem quantity record", "org.jooq.", "org.sqlite.", "com.github.f4b6a3.uuid.");
    // The cloth's stretch and its uncertainty come from the calculations, not from a copy of them.
    // What was found is named by keys of sentences, as data; they are worded outside.
    room("compare", "problem quantity working record statistics book cloth seam");
    room(
        "sheet",
        "problem quantity working words record compare book statistics tables cloth seam",
        "org.apache.poi.",
        "org.openxmlformats.",
        "org.apache.xmlbeans.",
        "org.apache.commons.csv.",
        "org.xml.sax.",
        "tools.jackson.");
    room(
        "paper",
        "problem quantity working words record compare book tables drawing lesson kit cloth seam"
            + " garment",
        "org.apache.pdfbox.",
        "org.apache.fontbox.",
        "com.google.zxing.");
    room("drawing", "problem quantity working words cloth seam garment kit statistics");
    room(
        "act",
        "problem quantity working words cloth seam garment kit statistics record tables lesson"
            + " book compare sheet paper drawing");
    // A view shows records, workings and tables' rows; it never opens a book by itself.
    room(
        "desk",
        "problem quantity working words cloth seam garment kit statistics record tables lesson"
            + " book compare drawing act",
        "javafx.",
        "atlantafx.",
        "com.sun.javafx.");
    room(
        "command",
        "problem quantity working words cloth seam garment kit statistics record tables lesson"
            + " book compare sheet paper drawing act",
        "picocli.",
        "tools.jackson.",
        "com.fasterxml.jackson.annotation.");
  }

  @BeforeAll
  static void read() {
    classes =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("walebook");
  }

  private static String roomOf(String packageName) {
    String[] parts = packageName.split("\\.");
    return parts.length > 1 ? parts[1] : "";
  }

  @Test
  void everyPackageStandsInARoomOfThePlan() {
    Set<String> unknown =
        classes.stream()
            .map(each -> roomOf(each.getPackageName()))
            .filter(room -> !room.isEmpty() && !ROOMS.containsKey(room))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(unknown).as("packages that the plan of rooms does not name").isEmpty();
  }

  @Test
  void aRoomImportsOnlyWhatThePlanAllows() {
    Set<String> breaches = new TreeSet<>();
    for (JavaClass each : classes) {
      Allowed allowed = ROOMS.get(roomOf(each.getPackageName()));
      if (allowed != null && !isGenerated(each)) {
        breaches(each, allowed).forEach(breaches::add);
      }
    }
    assertThat(breaches)
        .as("imports against the plan: a room that knows too much can't be changed alone")
        .isEmpty();
  }

  private static boolean isGenerated(JavaClass each) {
    return each.getPackageName().startsWith("walebook.book.jooq.made");
  }

  private static Stream<String> breaches(JavaClass each, Allowed allowed) {
    String own = roomOf(each.getPackageName());
    return each.getDirectDependenciesFromSelf().stream()
        .map(Dependency::getTargetClass)
        .map(JavaClass::getBaseComponentType)
        .filter(target -> !target.isPrimitive())
        .filter(target -> !isAllowed(own, target, allowed))
        .map(target -> own + ": " + each.getName() + " -> " + target.getName());
  }

  private static boolean isAllowed(String own, JavaClass target, Allowed allowed) {
    String name = target.getName();
    if (name.startsWith("walebook.")) {
      String room = roomOf(target.getPackageName());
      return room.equals(own) || allowed.rooms().contains(room);
    }
    return Stream.concat(EVERYWHERE.stream(), allowed.outside().stream())
        .anyMatch(name::startsWith);
  }

  @Test
  void noRoomsAndNoPackagesStandInACircle() {
    slices()
        .matching("walebook.(**)")
        .should()
        .beFreeOfCycles()
        .because("what stands in a circle can only be understood and changed all at once")
        .check(
            classes.that(
                new DescribedPredicate<>("are written by hand") {
                  @Override
                  public boolean test(JavaClass each) {
                    return !isGenerated(each);
                  }
                }));
  }

  @Test
  void placesOfTheWindowDoNotImportEachOther() {
    Set<String> shared = Set.of("common", "look", "shell", "start");
    Set<String> breaches = new TreeSet<>();
    for (JavaClass each : classes) {
      String place = placeOf(each);
      if (place.isEmpty() || place.equals("start")) {
        continue;
      }
      each.getDirectDependenciesFromSelf().stream()
          .map(Dependency::getTargetClass)
          .filter(target -> !placeOf(target).isEmpty())
          .filter(target -> !placeOf(target).equals(place) && !shared.contains(placeOf(target)))
          .forEach(target -> breaches.add(each.getName() + " -> " + target.getName()));
    }
    assertThat(breaches)
        .as("a place asks another by a wish, so that either can be built anew alone")
        .isEmpty();
  }

  private static String placeOf(JavaClass each) {
    String[] parts = each.getPackageName().split("\\.");
    return parts.length > 2 && parts[1].equals("desk") ? parts[2] : "";
  }

  @Test
  void viewModelsKnowNoScene() {
    Set<String> breaches = new TreeSet<>();
    for (JavaClass each : classes) {
      if (each.getName().matches(".*ViewModel(\\$.*)?")) {
        each.getDirectDependenciesFromSelf().stream()
            .map(dependency -> dependency.getTargetClass().getName())
            .filter(name -> name.startsWith("javafx.scene") || name.startsWith("javafx.stage"))
            .forEach(name -> breaches.add(each.getName() + " -> " + name));
      }
    }
    assertThat(breaches)
        .as("a view model is tested without a window, so it must not know one")
        .isEmpty();
  }

  @Test
  void sqlStaysInTheBookAndJooqBehindItsInterfaces() {
    Set<String> breaches = new TreeSet<>();
    for (JavaClass each : classes) {
      String home = each.getPackageName();
      boolean inside =
          home.startsWith("walebook.book.jooq")
              || home.startsWith("walebook.book.sqlite")
              || home.startsWith("walebook.book.open");
      if (!inside) {
        each.getDirectDependenciesFromSelf().stream()
            .map(dependency -> dependency.getTargetClass().getName())
            .filter(
                name ->
                    name.startsWith("java.sql")
                        || name.startsWith("org.jooq")
                        || name.startsWith("org.sqlite"))
            .forEach(name -> breaches.add(each.getName() + " -> " + name));
      }
    }
    assertThat(breaches)
        .as("a school's server is to stand behind the same interfaces one day")
        .isEmpty();
  }

  @Test
  void nothingThatLeavesTheBookAsksForPrivateGirths() {
    Set<String> leaving = Set.of("compare", "sheet", "paper");
    Set<String> breaches = new TreeSet<>();
    for (JavaClass each : classes) {
      if (leaving.contains(roomOf(each.getPackageName()))) {
        each.getDirectDependenciesFromSelf().stream()
            .map(dependency -> dependency.getTargetClass().getName())
            .filter("walebook.book.Garments"::equals)
            .forEach(name -> breaches.add(each.getName() + " -> " + name));
      }
    }
    assertThat(breaches).as("a body's girths are in no export").isEmpty();
  }

  @Test
  void calculationsAskNeitherFilesNorClocks() {
    Set<String> pure =
        Set.of("quantity", "working", "cloth", "seam", "garment", "kit", "statistics");
    Set<String> breaches = new TreeSet<>();
    for (JavaClass each : classes) {
      if (pure.contains(roomOf(each.getPackageName()))) {
        each.getDirectDependenciesFromSelf().stream()
            .map(dependency -> dependency.getTargetClass().getName())
            .filter(
                name ->
                    (name.startsWith("java.io.") && !name.equals("java.io.Serializable"))
                        || name.startsWith("java.nio.file")
                        || name.equals("java.time.Clock")
                        || name.startsWith("java.sql"))
            .forEach(name -> breaches.add(each.getName() + " -> " + name));
      }
    }
    assertThat(breaches).as("the same numbers must give the same working, anywhere").isEmpty();
  }
}
