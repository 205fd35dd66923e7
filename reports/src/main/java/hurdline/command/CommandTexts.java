package hurdline.command;

import picocli.CommandLine;

/** Makes the verbs, each with the surroundings that it works in. */
final class CommandTexts implements CommandLine.IFactory {
  private final CommandContext setting;

  CommandTexts(CommandContext setting) {
    this.setting = setting;
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    if (type == CheckVerb.class) {
      return type.cast(new CheckVerb(setting));
    }
    if (type == RunVerb.class) {
      return type.cast(new RunVerb(setting));
    }
    if (type == CompareVerb.class) {
      return type.cast(new CompareVerb(setting));
    }
    if (type == ChooseVerb.class) {
      return type.cast(new ChooseVerb(setting));
    }
    if (type == SeasonVerb.class) {
      return type.cast(new SeasonVerb(setting));
    }
    if (type == YardVerb.class) {
      return type.cast(new YardVerb(setting));
    }
    if (type == PageVerb.class) {
      return type.cast(new PageVerb(setting));
    }
    if (type == BacktestVerb.class) {
      return type.cast(new BacktestVerb(setting));
    }
    if (type == FitVerb.class) {
      return type.cast(new FitVerb(setting));
    }
    if (type == NewVerb.class) {
      return type.cast(new NewVerb(setting));
    }
    if (type == OpenVerb.class) {
      return type.cast(new OpenVerb(setting));
    }
    if (type == OutputFlags.class) {
      return type.cast(new OutputFlags(setting));
    }
    return CommandLine.defaultFactory().create(type);
  }
}
