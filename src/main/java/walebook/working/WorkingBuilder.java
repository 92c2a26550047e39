package walebook.working;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Measured;

/** Collects a working's lines in the order they are written. */
public final class WorkingBuilder {
  private final String name;
  private final Message title;
  private final List<Step> steps = new ArrayList<>();
  private final List<Message> assumptions = new ArrayList<>();
  private final List<Caution> cautions = new ArrayList<>();
  private final List<Source> sources = new ArrayList<>();
  private @Nullable Measured result;
  private @Nullable Verdict verdict;

  WorkingBuilder(String name, Message title) {
    this.name = name;
    this.title = title;
  }

  public WorkingBuilder step(Message says, String formula, String numbers) {
    steps.add(new Step(says, formula, numbers));
    return this;
  }

  public WorkingBuilder assume(Message assumption) {
    assumptions.add(assumption);
    return this;
  }

  public WorkingBuilder caution(Caution caution) {
    cautions.add(caution);
    return this;
  }

  public WorkingBuilder source(Source.Kind kind, String citation) {
    sources.add(new Source(kind, citation));
    return this;
  }

  public WorkingBuilder result(Measured value) {
    this.result = value;
    return this;
  }

  public WorkingBuilder verdict(Verdict value) {
    this.verdict = value;
    return this;
  }

  /** Ends the working with the answer as a sentence. */
  public Working says(Message says) {
    return new Working(name, title, result, verdict, says, steps, assumptions, cautions, sources);
  }
}
