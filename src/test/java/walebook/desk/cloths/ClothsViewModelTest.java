package walebook.desk.cloths;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.cloth.ClothCard;
import walebook.act.cloth.LogWash;
import walebook.act.cloth.StartReading;
import walebook.book.Classroom;
import walebook.desk.MeasuredClass;
import walebook.desk.RoomBook;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.record.Grain;
import walebook.record.Lesson;
import walebook.record.PlannedReading;

class ClothsViewModelTest {
  @TempDir Path folder;

  @Test
  void aCardSumsUpEachGrainFromItsHardestPull() {
    try (Classroom room = RoomBook.in(folder.resolve("a.walebook"))) {
      ClothsViewModel model = new ClothsViewModel(Sessions.of(room));
      assertThat(model.lines()).hasSize(3);
      model.open(room.cloth.id());
      ClothCard card = Objects.requireNonNull(model.cardProperty().get());
      assertThat(model.partProperty().get()).isEqualTo(ClothsViewModel.Part.CARD);
      assertThat(card.grains())
          .extracting(each -> each.grain())
          .containsExactly(Grain.WALE, Grain.COURSE);
      assertThat(card.grains().get(0).stretch().n()).isEqualTo(4);
      assertThat(card.grains().get(0).left()).isEqualTo(1);
      assertThat(card.balance()).isNotNull();
      assertThat(card.pieces()).isEqualTo(36);
    }
  }

  @Test
  void opensTheClothThatAnotherPlaceWishesFor() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Session session = Sessions.of(room);
      session.wish(new Wish("cloths", Wish.What.OPEN, room.cloth.id()));
      ClothsViewModel model = new ClothsViewModel(session);
      assertThat(Objects.requireNonNull(model.cardProperty().get()).cloth()).isEqualTo(room.cloth);
    }
  }

  @Test
  void beginsThePlannedReadingThatAnotherPlaceWishesFor() {
    try (Classroom room = Classroom.in(folder.resolve("p.walebook"))) {
      Lesson lesson = MeasuredClass.of(room);
      PlannedReading planned = MeasuredClass.mine(room, lesson).get(1).planned();
      Session session = Sessions.of(room);
      ClothsViewModel model = new ClothsViewModel(session);
      session.wish(new Wish("cloths", Wish.What.LOG_PLANNED, planned.id()));
      assertThat(model.partProperty().get()).isEqualTo(ClothsViewModel.Part.READING);
      StartReading.Asked asked = Objects.requireNonNull(model.askedProperty().get());
      assertThat(asked.line().planned()).isEqualTo(planned);
      assertThat(Objects.requireNonNull(model.cardProperty().get()).cloth())
          .isEqualTo(asked.cloth());
      // The same wish again keeps the form, and what is typed into it.
      session.wish(new Wish("cloths", Wish.What.LOG_PLANNED, planned.id()));
      assertThat(model.askedProperty().get()).isSameAs(asked);
      room.book.readingPlans().replan(planned.takenBack(Classroom.NOW));
      model.toToday();
      assertThat(session.wishProperty().get()).isEqualTo(Wish.show("today"));
      session.wish(new Wish("cloths", Wish.What.LOG_PLANNED, planned.id()));
      assertThat(model.noticeProperty().get().says()).contains("no longer in your plan");
      assertThat(model.partProperty().get()).isEqualTo(ClothsViewModel.Part.CARD);
      // Measuring from the card is nobody's plan.
      model.measure();
      assertThat(model.askedProperty().get()).isNull();
    }
  }

  @Test
  void backLeadsFromAFormToTheCardAndFromThereToTheList() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      ClothsViewModel model = new ClothsViewModel(Sessions.of(room));
      model.open(room.cloth.id());
      model.measure();
      model.back();
      assertThat(model.partProperty().get()).isEqualTo(ClothsViewModel.Part.CARD);
      model.back();
      assertThat(model.partProperty().get()).isEqualTo(ClothsViewModel.Part.LIST);
      model.add();
      model.back();
      assertThat(model.partProperty().get()).isEqualTo(ClothsViewModel.Part.LIST);
    }
  }

  @Test
  void aWashGoesToTheBinAndComesBack() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      Session session = Sessions.of(room);
      ClothsViewModel model = new ClothsViewModel(session);
      model.open(room.cloth.id());
      model.wash();
      assertThat(model.partProperty().get()).isEqualTo(ClothsViewModel.Part.WASH);
      new LogWash(room.book, Classroom.CLOCK)
          .save(room.cloth.id(), Map.of("grain", "wale", "before", "500", "after", "480"), false);
      session.changed();
      model.back();
      ClothCard card = Objects.requireNonNull(model.cardProperty().get());
      assertThat(card.washed()).hasSize(1);
      model.binWash(card.washes().get(0).id());
      assertThat(Objects.requireNonNull(model.cardProperty().get()).washes()).isEmpty();
      Objects.requireNonNull(model.noticeProperty().get().undo()).run();
      assertThat(Objects.requireNonNull(model.cardProperty().get()).washes()).hasSize(1);
    }
  }
}
