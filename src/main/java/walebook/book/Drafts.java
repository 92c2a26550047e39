package walebook.book;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.record.Draft;

/** What is typed and not yet saved. */
public interface Drafts {
  /** Keeps a draft in the place of the last one of the same form and owner. */
  void keep(Draft draft);

  @Nullable Draft find(String form, String owner);

  List<Draft> of(String form);

  /** Lets a draft go, once what it held is saved or thrown away on purpose. */
  void drop(String form, String owner);
}
