package walebook.command;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** What was typed behind a command, by name. */
final class Typed {
  private final ParseResult parsed;

  Typed(ParseResult parsed) {
    this.parsed = parsed;
  }

  boolean has(String flag) {
    return parsed.hasMatchedOption("--" + flag);
  }

  /** The option's text, or null when it was not given. */
  @Nullable String text(String option) {
    OptionSpec spec = parsed.matchedOption("--" + option);
    return spec == null || spec.stringValues().isEmpty() ? null : spec.stringValues().get(0);
  }

  String text(String option, String otherwise) {
    String text = text(option);
    return text == null ? otherwise : text;
  }

  List<String> all(String option) {
    OptionSpec spec = parsed.matchedOption("--" + option);
    return spec == null ? List.of() : spec.stringValues();
  }

  /** The nth word that follows the command. */
  String operand(int nth) {
    PositionalParamSpec spec = parsed.matchedPositional(nth);
    return spec == null || spec.stringValues().isEmpty() ? "" : spec.stringValues().get(0);
  }

  /** Every option of the list that was given, by its name. */
  Map<String, String> given(List<Option> options) {
    Map<String, String> typed = new java.util.LinkedHashMap<>();
    for (Option each : options) {
      String text = text(each.name());
      if (text != null) {
        typed.put(each.name(), text);
      }
    }
    return typed;
  }
}
