package hurdline.command;

import hurdline.answer.CompareAnswer;
import hurdline.answer.GridKey;
import hurdline.answer.PaperAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.problem.LocatedProblem;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleCompare;
import hurdline.sample.SampleYard;
import hurdline.service.PlantText;
import hurdline.service.PreparedGrid;
import hurdline.service.PreparedStudy;
import hurdline.service.Studies;
import hurdline.study.Chosen;
import hurdline.study.CompareAsk;
import hurdline.study.Effort;
import hurdline.study.Run;
import hurdline.study.SeasonAsk;
import hurdline.study.YardAsk;
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
record Playing(PreparedStudy.Simulation<RunAnswer> engine, BiConsumer<Chosen, Effort> asked)
    implements Studies {
  @Override
  public List<LocatedProblem> problems(PlantText plant, Chosen chosen) {
    throw new AssertionError("no command asks for problems alone");
  }

  @Override
  public Run inRanges(PlantText plant, Chosen chosen, Effort effort) {
    throw new AssertionError("no command asks for ranges");
  }

  @Override
  public PaperAnswer onPaper(PlantText plant, Chosen chosen) {
    asked.accept(chosen, null);
    return SampleAnswer.paper();
  }

  @Override
  public PreparedStudy<RunAnswer> run(PlantText plant, Chosen chosen, Effort effort) {
    asked.accept(chosen, effort);
    return new PreparedStudy<>(effort.replications(), engine);
  }

  @Override
  public PreparedStudy<SeasonAnswer> season(
      List<PlantText> plants, SeasonAsk ask, Chosen chosen, Effort effort) {
    throw new UnsupportedOperationException("SeasonCommandTest asks for seasons");
  }

  @Override
  public PreparedGrid grid(PlantText plant, Chosen chosen, List<GridKey> keys, Effort effort) {
    throw new AssertionError("no grid is asked for");
  }

  @Override
  public PreparedGrid grid(
      List<PlantText> plants, List<String> plans, Chosen chosen, List<GridKey> keys, Effort effort) {
    throw new AssertionError("no grid is asked for");
  }

  @Override
  public PreparedGrid grid(
      PlantText plant, Chosen chosen, YardAsk ask, List<GridKey> keys, Effort effort) {
    throw new AssertionError("no grid is asked for");
  }

  @Override
  public PreparedGrid grid(
      PlantText plant, Chosen base, CompareAsk ask, List<GridKey> keys, Effort effort) {
    throw new AssertionError("no grid is asked for");
  }

  @Override
  public PreparedStudy<YardAnswer> yard(
      PlantText plant, Chosen chosen, Effort effort, YardAsk ask) {
    asked.accept(chosen, effort);
    boolean stops = ask.equals(
            new YardAsk(Optional.of("stopped"), Optional.empty(), 0.125, OptionalDouble.of(0.9), true));
    YardAnswer answer = stops ? SampleYard.stopped() : SampleYard.tooSmall();
    return new PreparedStudy<>(15, (progress, stop) -> Optional.of(answer));
  }

  @Override
  public PreparedStudy<CompareAnswer> compare(
      PlantText plant, Chosen base, CompareAsk ask, Effort effort) {
    asked.accept(base, effort);
    CompareAnswer answer = ask.among().contains("stopped") ? SampleCompare.stopped() : SampleCompare.two();
    return new PreparedStudy<>(
        3 * effort.replications(),
        (progress, stop) ->
            ask.among().contains("nothing") ? Optional.empty() : Optional.of(answer));
  }
}
