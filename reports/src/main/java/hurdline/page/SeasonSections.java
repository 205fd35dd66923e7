package hurdline.page;

import hurdline.answer.Header;
import hurdline.answer.SeasonAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.season.PlanCharts;
import hurdline.measure.Kpi;
import hurdline.measure.Use;
import hurdline.text.DrawnCropWords;
import hurdline.text.InputWords;
import hurdline.text.MainTable;
import hurdline.text.SeasonHeadline;
import hurdline.text.SeasonTable;
import hurdline.text.SeasonWords;
import hurdline.text.Wording;
import java.util.List;
import java.util.stream.Stream;

/** The parts of the report of season plans: the building first, then what comes of it. */
final class SeasonSections {
  private final SeasonAnswer answer;
  private final Wording wording;
  private final PlanCharts figures;
  private final SeasonWords words;
  private final PlanTables tables;

  SeasonSections(SeasonAnswer answer, Wording wording, PlanCharts figures) {
    this.answer = answer;
    this.figures = figures;
    this.wording = wording;
    words = new SeasonWords(answer, wording);
    tables = new PlanTables(answer, wording);
  }

  List<Section> all() {
    List<Chart> money = figures.money();
    return List.of(
        new Section("answer", "The answer", true, this::writeAnswer),
        new Section(
            "building", "The building", true, html -> writeBuilding(html, figures.building())),
        new Section("year", "The year at a glance", true, this::writeYears),
        new Section("crops", "The crops", true, this::writeCrops),
        new Section(
            "machines", "The machines", true, html -> writeMachines(html, figures.machines())),
        new Section("money", "Money", !money.isEmpty(), html -> writeMoney(html, money)),
        new Section("crews", "Crews", true, this::writeCrews),
        Section.of("energy", "Electricity", figures.months()),
        new Section(
            "differences", "Plan against plan", answer.plans().size() > 1, this::writeDifferences),
        Assumptions.section(answer.header(), wording, answer.assumptions()),
        Cautions.section(answer, wording, answer.cautions()));
  }

  private void writeAnswer(Html html) {
    html.answer(new SeasonHeadline(answer, wording).sentences());
    Header header = answer.header();
    if (header.stopped()) {
      html.paragraph(
          "The comparison was stopped: "
              + header.replications()
              + " of "
              + header.replicationsAsked()
              + " replications are in this answer.");
    }
    MainTable main = SeasonTable.of(answer, wording);
    html.wholeTable("the answer", main);
    html.paragraph(words.legend(main));
    html.list(words.sentences());
    html.table("plans", tables.plans());
    new DrawnCropPart(DrawnCropWords.of(answer, wording), wording).write(html);
    new InputPart(new InputWords(answer.inputs(), answer.outline(), wording), wording).write(html);
  }

  private void writeBuilding(Html html, List<Chart> building) {
    html.figures(building);
    html.list(
        Stream.of(Use.values()).map(use -> use.word() + ": " + use.sentence() + ".").toList());
    html.table("campaigns and changeovers", tables.entries());
    html.paragraph(
        "From and to are those of the plan; a campaign ends earlier in a year in which its crop runs"
            + " out. Ended is the day of its last worked shift, the median of the years that had one, with the"
            + " 5th and 95th percentile; where these are not all years, their count is given.");
    if (tables.hasTasks()) {
      html.table("tasks of changeovers", tables.tasks());
      html.paragraph(
          "Tasks are laid into working time by their order and the hands there are. No number of hands"
              + " makes a changeover shorter than its critical path. Machines that are worked on are"
              + " locked out until guards are back.");
    }
    if (!answer.avoided().isEmpty()) {
      html.table("avoided changeovers", tables.avoided());
    }
  }

  private void writeYears(Html html) {
    html.paragraph(
        "Above, the building's calendar as it was simulated: a campaign is painted to the median of the days"
            + " on which it ended, the empty rest was planned and not needed (all of it where fewer than half"
            + " of the years had a shift of it), and the bar under it is where"
            + " its end lay between the 5th and the 95th percentile, the stroke its median. Below, the hours in which each machine produced"
            + " in every week, means over the replications, in the paint of the crop; all plans have one"
            + " scale.");
    html.figures(figures.years());
  }

  private void writeCrops(Html html) {
    html.figures(figures.crops());
    html.paragraph(
        "A line's end is the day of its last worked shift, in whichever campaign. In a year in which crop"
            + " was left over, that is no finish; in how many years there was one is given.");
    html.table("crops", tables.crops());
    html.paragraph(
        "Hours standing are those of the line's feeder. What the crop left over would have brought is at the"
            + " line's margin per bale fed, before electricity and overhead.");
  }

  private void writeMachines(Html html, List<Chart> machines) {
    html.figures(machines);
    html.table("ratios after ISO 22400-2", tables.ratios());
    html.list(
        Stream.of(Kpi.values())
            .map(kpi -> kpi.word().replace('_', ' ') + " = " + kpi.sentence() + ".")
            .toList());
    html.paragraph(
        "Names and ratios are those of ISO 22400-2, from memory: PBT is the machine's hours on duty,"
            + " APT those producing, AUST those in a package change or screen change, ADET those in a stop;"
            + " AUBT is PBT less the hours starved or blocked, AUPT is APT and AUST.");
  }

  private void writeMoney(Html html, List<Chart> money) {
    html.figures(money);
    if (tables.hasRent()) {
      html.table("owner and tenant", tables.rent());
      html.paragraph(
          "The tenant's margin is that of the line less the rent, which covers power, building and"
              + " machines; electricity and overhead are the owner's.");
    }
    html.paragraph(
        "A line's margin is before electricity and overhead, which serve all lines. The margin is"
            + " before interest and tax.");
  }

  private void writeCrews(Html html) {
    html.table("hand hours", tables.crews());
    html.paragraph(
        "Hours are those of all hands of a line's crews, rests included. Overtime is what a crew works"
            + " beyond its week's usual hours, and what one hand works after a shift, where the file says"
            + " what that pays. Whether such weeks are allowed is for local law and agreements.");
  }

  private void writeDifferences(Html html) {
    html.table("plan against plan", tables.differences());
    html.paragraph(
        "Each row is a plan less another in the same years; the interval holds for all pairs"
            + " together. Where it covers zero the difference is not significant. All measures are in"
            + " differences.csv.");
  }
}
