package walebook.desk.decide;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import walebook.drawing.GarmentPictures;
import walebook.garment.GarmentAnswers;
import walebook.quantity.Unit;
import walebook.words.Words;

/** The pictures that a sheet can fill so far, and the one of them that is looked at. */
public final class PicturesViewModel {
  private final Words words;
  private final Unit lengths;
  private final ReadOnlyObjectWrapper<List<GarmentPictures.One>> all =
      new ReadOnlyObjectWrapper<>(this, "all", List.of());
  private final ObjectProperty<GarmentPictures.Kind> kind =
      new SimpleObjectProperty<>(this, "kind", GarmentPictures.Kind.RINGS);
  private final ObjectProperty<String> about = new SimpleObjectProperty<>(this, "about", "");
  private final ReadOnlyObjectWrapper<GarmentPictures.@Nullable One> shown =
      new ReadOnlyObjectWrapper<>(this, "shown");

  /**
   * The pictures of one sheet; they follow its answers.
   *
   * @param lengths the unit that girths are shown in
   */
  PicturesViewModel(
      Words words, Unit lengths, ReadOnlyObjectProperty<@Nullable GarmentAnswers> answers) {
    this.words = words;
    this.lengths = lengths;
    answers.addListener((from, old, now) -> answered(now));
    kind.addListener((from, old, now) -> choose());
    about.addListener((from, old, now) -> choose());
    answered(answers.get());
  }

  /** Every picture there is. */
  public ReadOnlyObjectProperty<List<GarmentPictures.One>> allProperty() {
    return all.getReadOnlyProperty();
  }

  /** The kinds of which there are pictures. */
  List<GarmentPictures.Kind> kinds() {
    return all.get().stream().map(GarmentPictures.One::kind).distinct().sorted().toList();
  }

  /** The kind that is looked at. */
  public ObjectProperty<GarmentPictures.Kind> kindProperty() {
    return kind;
  }

  /** The girths or openings, in words, of which there are pictures of this kind. */
  List<String> abouts() {
    return ofKind().stream().map(each -> words.say(each.about())).toList();
  }

  /** Which of them is looked at, in words; the first when there is none of that name. */
  public ObjectProperty<String> aboutProperty() {
    return about;
  }

  /** The picture that is looked at; null while there is none. */
  public ReadOnlyObjectProperty<GarmentPictures.@Nullable One> shownProperty() {
    return shown.getReadOnlyProperty();
  }

  private void answered(@Nullable GarmentAnswers answers) {
    all.set(answers == null ? List.of() : GarmentPictures.of(answers.question(), lengths));
    List<GarmentPictures.Kind> kinds = kinds();
    if (!kinds.isEmpty() && !kinds.contains(kind.get())) {
      kind.set(kinds.get(0));
    }
    choose();
  }

  private void choose() {
    List<GarmentPictures.One> some = ofKind();
    shown.set(
        some.stream()
            .filter(each -> words.say(each.about()).equals(about.get()))
            .findFirst()
            .orElse(some.isEmpty() ? null : some.get(0)));
  }

  private List<GarmentPictures.One> ofKind() {
    return all.get().stream().filter(each -> each.kind() == kind.get()).toList();
  }
}
