package hurdline.audit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The answers about four shipped plants, recomputed from their replications: the example, the
 * starter plant, a shared building let to a tenant, and a small gin on all terms of growers and
 * buyers (a run alone). Each command has the kinds of comparison of its short form, but for what a
 * plant does not have.
 */
@Tag("proof")
class ThreePlantsAuditProofTest {
  private static final Path EXAMPLE = Plants.shipped("sweetgum-bend.yaml");
  private static final Path STARTER = Plants.shipped("small.yaml");
  private static final Path SHARED = Plants.shipped("seasons/rented.yaml");
  private static final Path TERMS = Plants.shipped("quail-run.yaml");
  private static final String REPLICATIONS = "12";

  @TempDir Path dir;

  private static void closes(
      Audit audit,
      WrittenAnswer answer,
      AnswerAuditTest shortForm,
      int figures,
      List<String> lacking) {
    Set<String> kinds = new HashSet<>(shortForm.least().keySet());
    kinds.removeAll(lacking);
    audit.closes(answer, kinds, figures);
  }

  private WrittenAnswer answer(String verb, Path plant, String... flags) throws IOException {
    return WrittenAnswer.of(verb, plant, dir.resolve(verb), flags);
  }

  @Test
  void aRunOfTheExample() throws IOException {
    WrittenAnswer answer =
        answer("run", EXAMPLE, "--replications", "40"); // enough to adjust for the drawn crop
    closes(Audit.ofRun(), answer, new RunAuditTest(), 115_000, List.of(MoneyCheck.RENT));
  }

  @Test
  void aComparisonOfTheExample() throws IOException {
    WrittenAnswer answer =
        answer(
            "compare",
            EXAMPLE,
            "--replications",
            "24",
            "--service-lives",
            "2",
            "--among",
            "bigger_mill,second_bag_hand",
            "--tornado=products.long_fiber_bales.price=20%,money.wage=20USD/h..30USD/h",
            "--break-even",
            "options.bigger_mill.cost,money.wage");
    closes(
        Audit.ofComparison(),
        answer,
        new CompareAuditTest(),
        70_000,
        List.of(MoneyCheck.RENT, WorthCheck.LIVES));
  }

  @Test
  void aYardOfTheExample() throws IOException {
    WrittenAnswer answer = answer("yard", EXAMPLE, "--replications", REPLICATIONS);
    Audit audit = Audit.ofYard(YardSizeCheck.runOfCheapest(answer, EXAMPLE, dir, REPLICATIONS));
    closes(audit, answer, new YardAuditTest(), 40_000, List.of(MoneyCheck.RENT));
  }

  /** Two mills, two areas and the second hand of the example, at one shed and one swing. */
  @Test
  void aChoiceAmongPlansOfTheExample() throws IOException {
    WrittenAnswer answer =
        answer(
            "choose",
            EXAMPLE,
            "--best",
            "money.margin:20000",
            "--worth",
            "--budget",
            "0",
            "--choice",
            "shed=1200bales",
            "--choice",
            "swing=2027-06-11,2027-06-14",
            "--choice",
            "mill=45hp|75hp",
            "--choice",
            "acres=x1|x1.2",
            "--replications",
            "6");
    Audit.ofChoice(EXAMPLE).closes(answer, Audit.kindsOfChoice(), 60);
  }

  @Test
  void aRunOfTheStarter() throws IOException {
    WrittenAnswer answer = answer("run", STARTER, "--replications", REPLICATIONS);
    closes(
        Audit.ofRun(),
        answer,
        new RunAuditTest(),
        13_000,
        List.of(MoneyCheck.RENT, MassCheck.DRAWN, AdjustedCheck.ADJUSTED, OrderCheck.ORDERS));
  }

  @Test
  void aRunOfTheGinOnTerms() throws IOException {
    String text = Files.readString(TERMS).replaceFirst("(?s)\\ndoubt:.*?(?=\\noptions:)", "");
    Path file = Files.writeString(dir.resolve("terms.yaml"), text); // intervals of chance alone
    WrittenAnswer answer = answer("run", file, "--replications", REPLICATIONS);
    closes(
        Audit.ofRun(),
        answer,
        new RunAuditTest(),
        70_000,
        List.of(
            MoneyCheck.RENT,
            OrderCheck.ORDERS,
            AdjustedCheck.ADJUSTED,
            HoursCheck.SCREENS,
            MassCheck.SCREENS,
            EnergyCheck.MILLS));
  }

  @Test
  void aComparisonOfTheStarter() throws IOException {
    WrittenAnswer answer =
        answer(
            "compare",
            STARTER,
            "--replications",
            "24",
            "--service-lives",
            "2",
            "--tornado=products.fiber.price=20%,money.wage=20USD/h..30USD/h",
            "--break-even",
            "options.bigger_mill.cost");
    closes(
        Audit.ofComparison(),
        answer,
        new CompareAuditTest(),
        20_000,
        List.of(MoneyCheck.RENT, MassCheck.DRAWN));
  }

  @Test
  void aRunOfTheSharedBuilding() throws IOException {
    WrittenAnswer answer = answer("run", SHARED, "--replications", REPLICATIONS);
    closes(
        Audit.ofRun(),
        answer,
        new RunAuditTest(),
        80_000,
        List.of(AdjustedCheck.ADJUSTED, OrderCheck.ORDERS));
  }

  @Test
  void aSeasonOfTheSharedBuilding() throws IOException {
    WrittenAnswer answer =
        answer("season", SHARED, "--replications", REPLICATIONS, "--changeovers");
    Audit audit = Audit.ofSeason(ChangeoverCheck.runWithout(answer, SHARED, dir, REPLICATIONS));
    closes(audit, answer, new SeasonAuditTest(), 120_000, List.of());
  }
}
