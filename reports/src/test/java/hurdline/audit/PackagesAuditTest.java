package hurdline.audit;

import static org.junit.jupiter.params.provider.Arguments.arguments;

import hurdline.measure.Measure;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** A shipped plant whose crop comes in two forms and whose hurds leave in two packages. */
class PackagesAuditTest extends AnswerAuditTest {
  private static final List<String> LACKING =
      List.of(
          MoneyCheck.RENT,
          AdjustedCheck.ADJUSTED,
          OrderCheck.ORDERS,
          StoreCheck.STORES,
          StoreCheck.LEVELS,
          HoursCheck.SCREENS,
          MassCheck.SCREENS,
          EnergyCheck.MILLS);

  @Override
  WrittenAnswer answer(Path dir) throws IOException {
    return WrittenAnswer.of(
        "run", Plants.shipped("egret-fork.yaml"), dir.resolve("run"), "--replications", "3");
  }

  @Override
  Audit audit(WrittenAnswer answer, Path dir) {
    return Audit.ofRun();
  }

  @Override
  Map<String, Integer> least() {
    Map<String, Integer> least = new HashMap<>();
    new RunAuditTest().least().keySet().forEach(what -> least.put(what, 1));
    least.keySet().removeAll(LACKING);
    least.put(MoneyCheck.PACKAGES, 3 * 7);
    least.put(MassCheck.YARD, 3 * 4);
    return least;
  }

  @Override
  Stream<Arguments> faults() {
    return Stream.of(
        arguments(
            MoneyCheck.PACKAGES,
            Control.ofMeasure(Measure.PRODUCT_PACKAGES_OF.of("hurd", "big_bag"))),
        arguments(
            MoneyCheck.PACKAGES,
            Control.ofMeasure(Measure.PRODUCT_PACKAGES_OF.of("hurd", "bulk_bag"))),
        arguments(MoneyCheck.PACKAGES, Control.ofMeasure(Measure.PRODUCT_PACKAGES.of("hurd"))),
        arguments(MoneyCheck.PACKAGES, Control.ofMeasure(Measure.MONEY_PACKAGES.of())),
        arguments(MassCheck.YARD, Control.ofMeasure(Measure.MASS_FED.of("stalk_modules"))),
        arguments(MassCheck.BALANCE, Control.ofMeasure(Measure.MASS_FED.of("stalk"))));
  }
}
