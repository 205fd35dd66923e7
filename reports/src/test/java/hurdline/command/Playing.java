package hurdline.command;

import hurdline.answer.CompareAnswer;
import hurdline.answer.GridKey;
import hurdline.answer.PaperAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleCompare;
import hurdline.sample.SampleYard;
import hurdline.study.Chosen;
import hurdline.study.CompareAsk;
import hurdline.study.Effort;
import hurdline.study.SeasonAsk;
import hurdline.study.YardAsk;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;

/**
 * An engine that takes any plant and effort, says which, and gives answers made beforehand.
 *
 * @param engine how a run is played
 * @param asked told each choice with its effort
 */
record Playing(Studies.Study<RunAnswer> engine, BiConsumer<Chosen, Effort> asked)
    implements Studies {
  @Override
  public PaperAnswer onPaper(Path file, Chosen chosen) {
    asked.accept(chosen, null);
    return SampleAnswer.paper();
  }

  @Override
  public Studies.Waiting<RunAnswer> run(Path file, Chosen chosen, Effort effort) {
    asked.accept(chosen, effort);
    return new Studies.Waiting<>(effort.replications(), engine);
  }

  @Override
  public Studies.Waiting<SeasonAnswer> season(
      List<Path> files, SeasonAsk ask, Chosen chosen, Effort effort) {
    throw new UnsupportedOperationException("SeasonCommandTest asks for seasons");
  }

  @Override
  public Studies.Gridding grid(Path file, Chosen chosen, List<GridKey> keys, Effort effort) {
    throw new AssertionError("no grid is asked for");
  }

  @Override
  public Studies.Gridding grid(
      List<Path> files, List<String> plans, Chosen chosen, List<GridKey> keys, Effort effort) {
    throw new AssertionError("no grid is asked for");
  }

  @Override
  public Studies.Gridding grid(
      Path file, Chosen chosen, YardAsk ask, List<GridKey> keys, Effort effort) {
    throw new AssertionError("no grid is asked for");
  }

  @Override
  public Studies.Gridding grid(
      Path file, Chosen base, CompareAsk ask, List<GridKey> keys, Effort effort) {
    throw new AssertionError("no grid is asked for");
  }

  @Override
  public Studies.Waiting<YardAnswer> yard(
      Path file, Chosen chosen, Effort effort, YardAsk ask) {
    asked.accept(chosen, effort);
    boolean stops = ask.equals(
            new YardAsk(Optional.of("stopped"), Optional.empty(), 0.125, OptionalDouble.of(0.9), true));
    YardAnswer answer = stops ? SampleYard.stopped() : SampleYard.tooSmall();
    return new Studies.Waiting<>(15, (progress, stop) -> Optional.of(answer));
  }

  @Override
  public Studies.Waiting<CompareAnswer> compare(
      Path file, Chosen base, CompareAsk ask, Effort effort) {
    asked.accept(base, effort);
    CompareAnswer answer = ask.among().contains("stopped") ? SampleCompare.stopped() : SampleCompare.two();
    return new Studies.Waiting<>(
        3 * effort.replications(),
        (progress, stop) ->
            ask.among().contains("nothing") ? Optional.empty() : Optional.of(answer));
  }
}
