package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.lesson.TakenUp;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.kit.Kit;
import walebook.lesson.LessonPack;
import walebook.lesson.Packs;
import walebook.lesson.Plan;
import walebook.paper.ReadPdf;
import walebook.problem.Problem;
import walebook.record.Lesson;
import walebook.record.Priced;
import walebook.record.Student;

class KitViewModelTest {
  private static final LessonPack SEAM = Packs.seam();
  private static final Plan.ClothSlot FIRST = SEAM.plan().cloths().get(0);

  @TempDir Path folder;

  @Test
  void theClassInHandAndItsClothsNeedNoTyping() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      KitViewModel model = new KitViewModel(Sessions.of(room), SEAM, null);
      assertThat(model.field(KitViewModel.STUDENTS).text().get()).isEqualTo("2");
      model.cloth(FIRST).text().set(room.cloth.id().toString());
      String thread = "Polyester all-purpose thread in a colour that shows";
      assertThat(model.prices())
          .contains(new KitPriceFields.Price("price-" + thread, thread, true))
          .contains(new KitPriceFields.Price("price-Labels", "Labels", false));
      model.field(model.priceOf(FIRST)).text().set(" 8.5 ");
      model.field("price-" + thread).text().set("0.0x");
      model.workOut();
      assertThat(model.kitProperty().get()).isNull();
      assertThat(model.field("price-" + thread).problem().get()).isNotNull();
      model.field("price-" + thread).text().set("0.02");
      model.workOut();
      Kit kit = Objects.requireNonNull(model.kitProperty().get());
      assertThat(kit.students()).isEqualTo(2);
      assertThat(kit.cloths()).extracting("name").containsExactly("Grey jersey");
      assertThat(kit.lines()).filteredOn(each -> each.cost() != null).hasSize(2);
      assertThat(model.saysProperty().get()).isEmpty();
    }
  }

  /** A price belongs to the cloth of the room: it comes along to whatever kit the cloth is in. */
  @Test
  void pricesAreRememberedAndForgottenWhenEmptied() {
    try (Classroom room = Classroom.in(folder.resolve("p.walebook"))) {
      KitViewModel first = new KitViewModel(Sessions.of(room), SEAM, null);
      first.cloth(FIRST).text().set(room.cloth.id().toString());
      first.width(FIRST).text().set("150 cm");
      first.field(first.priceOf(FIRST)).text().set("8,5");
      first.field("price-Labels").text().set("cheap");
      first.workOut();
      assertThat(room.book.kitPrices().all()).as("nothing bad is kept").isEmpty();
      first.field("price-Labels").text().set("0.1");
      first.workOut();
      assertThat(room.book.kitPrices().all())
          .containsOnly(
              Map.entry(Priced.metreOf(room.cloth.id()), 8.5),
              Map.entry(Priced.of("Labels", false), 0.1));

      KitViewModel later = new KitViewModel(Sessions.of(room), SEAM, null);
      assertThat(later.field("price-Labels").text().get()).isEqualTo("0.1");
      assertThat(later.field(later.priceOf(FIRST)).text().get()).isEmpty();
      later.cloth(FIRST).text().set(room.cloth.id().toString());
      assertThat(later.field(later.priceOf(FIRST)).text().get()).isEqualTo("8.5");
      later.field("price-Labels").text().set("");
      later.field(later.priceOf(FIRST)).text().set("9");
      later.cloth(FIRST).text().set("");
      assertThat(later.field(later.priceOf(FIRST)).text().get())
          .as("what was typed stays")
          .isEqualTo("9");
      later.cloth(FIRST).text().set(room.cloth.id().toString());
      later.workOut();
      assertThat(room.book.kitPrices().all())
          .containsOnly(Map.entry(Priced.metreOf(room.cloth.id()), 9.0));
    }
  }

  @Test
  void mistakesShowAtTheirFieldsAndNothingTypedIsLost() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      KitViewModel model = new KitViewModel(Sessions.of(room), SEAM, null);
      model.width(FIRST).text().set("wide");
      model.field(KitViewModel.STUDENTS).text().set("0");
      model.wash(FIRST).text().set("-5/x");
      model.workOut();
      assertThat(model.width(FIRST).problem().get()).isNotNull();
      assertThat(model.field(KitViewModel.STUDENTS).problem().get()).isNotNull();
      assertThat(model.kitProperty().get()).isNull();
      assertThat(model.width(FIRST).text().get()).isEqualTo("wide");
      assertThat(model.wash(FIRST).problem().get()).isNotNull();
      assertThat(model.saysProperty().get()).contains("marked above");
      model.field(KitViewModel.STUDENTS).text().set("12");
      model.width(FIRST).text().set("150");
      model.wash(FIRST).text().set("");
      model.workOut();
      assertThat(model.width(FIRST).problem().get())
          .extracting(Problem::code)
          .isEqualTo("kit.too-narrow");
      assertThat(model.kitProperty().get()).isNull();
    }
  }

  @Test
  void aClassWithoutStudentsIsAskedForHowMany() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      for (Student each : room.book.enrolments().studentsOf(room.schoolClass.id())) {
        LocalDate left = LocalDate.of(2026, 10, 1);
        room.book.enrolments().leave(room.schoolClass.id(), each.id(), left);
      }
      Session session = Sessions.of(room);
      KitViewModel model = new KitViewModel(session, SEAM, null);
      model.workOut();
      Problem problem = Objects.requireNonNull(model.field(KitViewModel.STUDENTS).problem().get());
      assertThat(session.words().sayAtField(problem)).contains("for how many students");
      assertThat(model.kitProperty().get()).isNull();
    }
  }

  @Test
  void aLessonsClothsAreFilledIn() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      Lesson lesson = TakenUp.seam(room);
      KitViewModel model = new KitViewModel(Sessions.of(room), SEAM, lesson);
      assertThat(model.cloth(FIRST).text().get()).isEqualTo(room.cloth.id().toString());
      assertThat(model.isOf(SEAM, lesson)).isTrue();
      assertThat(model.isOf(SEAM, null)).isFalse();
    }
  }

  @Test
  void theListIsPrintedWhereThePersonSays() throws IOException {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      KitViewModel model =
          new KitViewModel(Sessions.of(room.book, room.schoolClass, folder), SEAM, null);
      Path file = folder.resolve("seam-that-stretches-kit.pdf");
      model.print();
      assertThat(file).doesNotExist();
      model.width(FIRST).text().set("150 cm");
      model.workOut();
      model.paperProperty().set("letter");
      model.print();
      assertThat(model.saysProperty().get()).contains(file.toString());
      try (ReadPdf pdf = ReadPdf.of(file)) {
        assertThat(pdf.text()).contains("For 2 students", "150 cm wide");
        assertThat(pdf.sizeMm(0)[0]).isGreaterThan(215);
      }
    }
  }

  @Test
  void aCuttingPlanIsSavedAsAPicture() throws IOException {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      KitViewModel model =
          new KitViewModel(Sessions.of(room.book, room.schoolClass, folder), SEAM, null);
      model.width(FIRST).text().set("150 cm");
      model.workOut();
      Kit kit = Objects.requireNonNull(model.kitProperty().get());
      model.save(kit.cloths().get(0));
      assertThat(Files.readString(folder.resolve("cutting-plan.svg"))).contains("<svg");
      assertThat(model.saysProperty().get()).contains("cutting-plan.svg");
    }
  }
}
