package hurdline.command;

import hurdline.answer.CheckAnswer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.GridKey;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.problem.LocatedProblem;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleCompare;
import hurdline.sample.SampleYard;
import hurdline.service.PlantText;
import hurdline.service.PreparedChoice;
import hurdline.service.PreparedGrid;
import hurdline.service.PreparedStudy;
import hurdline.service.Studies;
import hurdline.study.PlantChanges;
import hurdline.study.choose.ChooseAsk;
import hurdline.study.compare.CompareAsk;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.Run;
import hurdline.study.season.SeasonAsk;
import hurdline.study.yard.YardAsk;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;

/**
 * An engine that takes any plant and effort, says which, and gives answers made beforehand.
 *
 * @param engine how a run is simulated
 * @param asked told each choice with its effort
 */
record Simulating(
    PreparedStudy.Simulation<RunAnswer> engine, BiConsumer<PlantChanges, RunSettings> asked)
    implements Studies {
  @Override
  public List<LocatedProblem> problems(PlantText plant, PlantChanges chosen) {
    throw new AssertionError("no command asks for problems alone");
  }

  @Override
  public Run inRanges(PlantText plant, PlantChanges chosen, RunSettings effort) {
    throw new AssertionError("no command asks for ranges");
  }

  @Override
  public PreparedChoice choose(
      PlantText plant,
      PlantChanges chosen,
      ChooseAsk ask,
      RunSettings effort,
      Optional<String> on) {
    throw new AssertionError("ChooseCommandTest chooses among real plans");
  }

  @Override
  public PreparedStudy<hurdline.answer.BacktestAnswer> backtest(
      PlantText plant, PlantChanges chosen, java.nio.file.Path records, RunSettings effort) {
    throw new AssertionError("BacktestCommandTest simulates real records");
  }

  @Override
  public hurdline.answer.FitAnswer fit(PlantText plant, java.nio.file.Path records, long seed) {
    throw new AssertionError("FitCommandTest fits real records");
  }

  @Override
  public CheckAnswer onPaper(PlantText plant, PlantChanges chosen) {
    asked.accept(chosen, null);
    return SampleAnswer.paper();
  }

  @Override
  public PreparedStudy<RunAnswer> run(PlantText plant, PlantChanges chosen, RunSettings effort) {
    asked.accept(chosen, effort);
    return new PreparedStudy<>(effort.replications(), engine);
  }

  @Override
  public PreparedStudy<RunAnswer> restOfSeason(
      PlantText plant,
      PlantChanges chosen,
      java.nio.file.Path records,
      java.time.LocalDate asOf,
      RunSettings effort) {
    throw new AssertionError("RestCommandTest simulates real records");
  }

  @Override
  public PreparedStudy<SeasonAnswer> season(
      List<PlantText> plants, SeasonAsk ask, PlantChanges chosen, RunSettings effort) {
    throw new UnsupportedOperationException("SeasonCommandTest asks for seasons");
  }

  @Override
  public PreparedGrid grid(
      PlantText plant, PlantChanges chosen, List<GridKey> keys, RunSettings effort) {
    throw new AssertionError("no grid is asked for");
  }

  @Override
  public PreparedGrid grid(
      List<PlantText> plants,
      List<String> plans,
      PlantChanges chosen,
      List<GridKey> keys,
      RunSettings effort) {
    throw new AssertionError("no grid is asked for");
  }

  @Override
  public PreparedGrid grid(
      PlantText plant, PlantChanges chosen, YardAsk ask, List<GridKey> keys, RunSettings effort) {
    throw new AssertionError("no grid is asked for");
  }

  @Override
  public PreparedGrid grid(
      PlantText plant, PlantChanges base, CompareAsk ask, List<GridKey> keys, RunSettings effort) {
    throw new AssertionError("no grid is asked for");
  }

  @Override
  public PreparedStudy<YardAnswer> yard(
      PlantText plant, PlantChanges chosen, RunSettings effort, YardAsk ask) {
    asked.accept(chosen, effort);
    boolean stops =
        ask.equals(
            new YardAsk(
                Optional.of("stopped"), Optional.empty(), 0.125, OptionalDouble.of(0.9), 0, true));
    YardAnswer answer = stops ? SampleYard.stopped() : SampleYard.tooSmall();
    return new PreparedStudy<>(15, (progress, stop) -> Optional.of(answer));
  }

  @Override
  public PreparedStudy<CompareAnswer> compare(
      PlantText plant, PlantChanges base, CompareAsk ask, RunSettings effort) {
    asked.accept(base, effort);
    CompareAnswer answer =
        ask.among().contains("stopped") ? SampleCompare.stopped() : SampleCompare.two();
    return new PreparedStudy<>(
        3 * effort.replications(),
        (progress, stop) ->
            ask.among().contains("nothing") ? Optional.empty() : Optional.of(answer));
  }
}
