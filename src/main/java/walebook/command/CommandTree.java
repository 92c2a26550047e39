package walebook.command;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import walebook.words.Words;

/** Builds the tree of commands that the parser goes by, its words taken from the bundle. */
final class CommandTree {
  private final Words words;

  CommandTree(Words words) {
    this.words = words;
  }

  CommandLine of(List<Job> jobs) {
    CommandSpec root = CommandSpec.create().name("walebook");
    root.usageMessage().description(words.say("command.about"));
    help(root);
    for (Job job : jobs) {
      CommandSpec at = root;
      String[] path = job.words().split(" ", -1);
      for (int i = 0; i < path.length - 1; i++) {
        at = group(at, path[i]);
      }
      at.addSubcommand(path[path.length - 1], command(job));
    }
    return new CommandLine(root).setUsageHelpWidth(100).setPosixClusteredShortOptionsAllowed(false);
  }

  private CommandSpec group(CommandSpec parent, String name) {
    CommandLine known = parent.subcommands().get(name);
    if (known != null) {
      return known.getCommandSpec();
    }
    CommandSpec group = CommandSpec.create();
    String key = "command.group." + name;
    group.usageMessage().description(words.say(words.has(key) ? key : "command.group"));
    help(group);
    parent.addSubcommand(name, group);
    return group;
  }

  private CommandSpec command(Job job) {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(job);
    spec.usageMessage().description(says(job.says()));
    help(spec);
    for (Option each : job.options()) {
      spec.addOption(option(each));
    }
    if (job.json()) {
      spec.addOption(option(Option.flag("json", "command.option.json")));
    }
    int place = 0;
    for (Option each : job.operands()) {
      spec.addPositional(
          PositionalParamSpec.builder()
              .index(String.valueOf(place++))
              .paramLabel(each.label())
              .description(says(each.says()))
              .required(each.required())
              .type(String.class)
              .build());
    }
    return spec;
  }

  private OptionSpec option(Option option) {
    OptionSpec.Builder spec =
        OptionSpec.builder("--" + option.name())
            .description(says(option.says()))
            .required(option.required());
    if (option.isFlag()) {
      return spec.arity("0").type(boolean.class).build();
    }
    spec.arity("1").paramLabel(option.label());
    return option.many()
        ? spec.type(List.class).auxiliaryTypes(String.class).build()
        : spec.type(String.class).build();
  }

  /** A percent sign in a sentence would be read as a format by the parser's help. */
  private String says(String key) {
    String sentence = words.has(key) ? words.say(key) : key;
    return sentence.replace("%", "%%");
  }

  private void help(CommandSpec spec) {
    spec.addOption(
        OptionSpec.builder("-h", "--help")
            .usageHelp(true)
            .description(words.say("command.option.help"))
            .build());
  }
}
