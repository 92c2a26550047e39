package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.Fold;
import walebook.desk.common.IntoView;
import walebook.desk.common.LinesField;
import walebook.desk.common.PickedField;
import walebook.desk.common.Texts;
import walebook.desk.common.TypedField;
import walebook.lesson.PiecesPlan;
import walebook.lesson.Plan;
import walebook.record.Cloth;
import walebook.record.MachineKind;
import walebook.words.Words;

/** The fields that take a pack up. */
final class TakeUpPane extends VBox {
  TakeUpPane(Words words, TakeUpViewModel model, List<Cloth> cloths) {
    super(16);
    Plan plan = model.pack().plan();
    TypedField on = new TypedField(words, words.say("desk.lessons.take-up.on"), "", model.on());
    IntoView.onceShown(on.field());
    FieldGroup when = new FieldGroup(words.say("desk.lessons.take-up.when")).add(on, 11);
    getChildren().setAll(Texts.text(words.say("desk.lessons.take-up.says")), when);
    if (!plan.cloths().isEmpty()) {
      FieldGroup which = new FieldGroup(words.say("desk.lessons.take-up.cloths"));
      List<String> keys = new ArrayList<>(List.of(""));
      cloths.forEach(each -> keys.add(each.id().toString()));
      for (Plan.ClothSlot slot : plan.cloths()) {
        which.add(
            new PickedField(
                words,
                words.say("desk.lessons.take-up.slot", slot.slot(), slot.says()),
                keys,
                key -> name(cloths, key),
                model.cloth(slot)),
            26);
      }
      if (cloths.isEmpty()) {
        which.below(Texts.text(words.say("desk.lessons.take-up.no-cloths"), "caution"));
      }
      Label unmeasured = Texts.text("", "caution");
      unmeasured
          .textProperty()
          .bind(
              model
                  .unmeasuredProperty()
                  .map(
                      names ->
                          names.isEmpty()
                              ? ""
                              : words.say("desk.lessons.take-up.unmeasured", names)));
      unmeasured.visibleProperty().bind(model.unmeasuredProperty().isNotEmpty());
      unmeasured.managedProperty().bind(unmeasured.visibleProperty());
      which.below(unmeasured);
      getChildren().add(which);
    }
    getChildren().add(more(words, model, plan instanceof PiecesPlan));
  }

  private static Fold more(Words words, TakeUpViewModel model, boolean sewn) {
    List<String> levels = model.pack().plan().levels();
    String level = levels.isEmpty() ? "" : levels.get(levels.size() - 1);
    FieldGroup group =
        new FieldGroup(words.say("desk.lessons.take-up.how-many"))
            .add(lines(words, model, "desk.lessons.take-up.share", "2", TakeUpViewModel.SHARE), 20)
            .add(leftOut(words, model, sewn, level), 20)
            .add(
                new AddLine(
                    words,
                    words.say("desk.lessons.take-up.add-left-out"),
                    levels,
                    line -> line.replace('=', ' '),
                    model.more(TakeUpViewModel.LEAVE_OUT)),
                20)
            .add(
                lines(
                    words,
                    model,
                    "desk.lessons.take-up.without",
                    sewn ? "overlocker" : "cloth b",
                    TakeUpViewModel.WITHOUT),
                20)
            .add(
                new AddLine(
                    words,
                    words.say("desk.lessons.take-up.add-without"),
                    missing(model.pack().plan(), sewn),
                    line -> missingSays(words, line),
                    model.more(TakeUpViewModel.WITHOUT)),
                20)
            .add(
                new TypedField(
                    words,
                    words.say("desk.lessons.take-up.seed"),
                    "2026",
                    model.more(TakeUpViewModel.SEED)),
                11)
            .below(
                Texts.caption(
                    sewn
                        ? words.say("desk.lessons.take-up.more-says", level)
                        : words.say("desk.lessons.take-up.more-says-readings", level)));
    Fold fold = new Fold(words.say("desk.lessons.take-up.more"), group);
    opensForMistakes(model, fold);
    return fold;
  }

  private static void opensForMistakes(TakeUpViewModel model, Fold fold) {
    // A mistake in a folded field would be refused without a word.
    for (String each :
        List.of(
            TakeUpViewModel.SHARE,
            TakeUpViewModel.LEAVE_OUT,
            TakeUpViewModel.WITHOUT,
            TakeUpViewModel.SEED)) {
      model
          .more(each)
          .problem()
          .addListener(
              (from, old, now) -> {
                if (now != null) {
                  fold.openProperty().set(true);
                }
              });
    }
  }

  private static LinesField leftOut(
      Words words, TakeUpViewModel model, boolean sewn, String example) {
    String label =
        sewn ? "desk.lessons.take-up.leave-out" : "desk.lessons.take-up.leave-out-readings";
    return lines(words, model, label, example, TakeUpViewModel.LEAVE_OUT);
  }

  /** What may be missing in a room, as it is written: kinds of machine, cloths of the plan. */
  private static List<String> missing(Plan plan, boolean sewn) {
    List<String> all = new ArrayList<>();
    if (sewn) {
      Arrays.stream(MachineKind.values()).map(MachineKind::key).forEach(all::add);
    }
    plan.cloths().forEach(each -> all.add("cloth " + each.slot()));
    return all;
  }

  private static String missingSays(Words words, String line) {
    String key = "common.choice." + line;
    return words.has(key) ? words.say(key) : line;
  }

  private static LinesField lines(
      Words words, TakeUpViewModel model, String label, String prompt, String field) {
    return new LinesField(words, words.say(label), prompt, 2, model.more(field));
  }

  private static String name(List<Cloth> cloths, String key) {
    return cloths.stream()
        .filter(each -> each.id().toString().equals(key))
        .map(Cloth::name)
        .findFirst()
        .orElse("");
  }
}
