package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.Answer;
import hurdline.page.ReportPage;
import hurdline.table.RecordFile;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** People read titles: the small plant with titles that no name of it resembles. */
class TitlesOnPagesTest {
  /** What stands in the small plant, and the title that takes its place. */
  private static final String[][] TITLES = {
    {"  stalk:\n    title: Stalk", "Kenaf straw"},
    {"  feeder:\n    title: Bale feeder", "Straw table"},
    {"  saw:\n    title: Separating saw", "Ripper"},
    {"  press: {title: Fiber press", "Bast press"},
    {"  hurd_bin: {title: Hurd bin", "Core silo"},
    {"  mill:\n    title: Hammer mill", "Kessler KX grinder"},
    {"  bagger: {title: Hurd bagger", "Sacker"},
    {"  fiber: {title: Bast fiber", "Ribbon"},
    {"  hurd:  {title: Hurd", "Core"},
    {"  stalk_line:\n    title: Stalk line", "Decortication"},
    {"  loader: {title: Loader", "Grab"},
    {"    shed: {title: Bale shed", "North Barn"},
    {"  bigger_mill:\n    title: Bigger mill", "30 hp grinder"},
    {"  second_spout:\n    title: Second spout", "Twin sacker"}
  };

  /** The same of what belongs to a machine or to the calendar. */
  private static final String[][] PARTS = {
    {"    day: {", "Long daylight"}, {"choke: {", "Wrapped rotor"}
  };

  private static final String PLANS =
      """
      plans:
        longer_day:
          title: Ten-hour day
          with: {calendar: {shifts: {day: {to: "17:30"}}}}
        spare_mill:
          with: {machines: {extra_fan: {title: Roof fan, kind: fan}}, lines: {stalk_line: {auxiliaries: [extra_fan]}}}
      """;

  /**
   * A name of the plant file that nobody need read; with a dot beside it, it is part of a key or a
   * measure.
   */
  private static final Pattern RAW_NAME =
      Pattern.compile(
          "(?<![\\w.])(hurd_bin|stalk_line|bigger_mill|second_spout|longer_day|spare_mill|extra_fan|screen_change)(?![\\w.])");

  @TempDir Path folder;

  private Path plant() throws IOException {
    String text;
    try (var in = TitlesOnPagesTest.class.getResourceAsStream("/line-configs/small.yaml")) {
      text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    for (String[] title : TITLES) {
      assertThat(text).contains(title[0]);
      text =
          text.replaceFirst(
              Pattern.quote(title[0]) + "(?=[,\\s])",
              Matcher.quoteReplacement(title[0].replaceFirst("title: .*", "title: " + title[1])));
    }
    for (String[] part : PARTS) {
      assertThat(text).contains(part[0]);
      text = text.replace(part[0], part[0] + "title: " + part[1] + ", ");
    }
    return Files.writeString(folder.resolve("plant.yaml"), text + PLANS);
  }

  /**
   * What a page says: texts, and the words of drawings and of readers aloud; not what is set as
   * code.
   */
  private static String read(String page) {
    return page.replaceAll("(?s)<style>.*?</style>", "")
        .replaceAll("<code>[^<]*</code>", "")
        .replaceAll("<[^>]*aria-label=\"([^\"]*)\"[^>]*>", " $1 ")
        .replaceAll("<[^>]*>", "\n");
  }

  private static List<String> rawNames(String text) {
    List<String> found = new ArrayList<>();
    for (Matcher name = RAW_NAME.matcher(text); name.find(); ) {
      found.add(
          text.substring(Math.max(0, name.start() - 40), Math.min(text.length(), name.end() + 20)));
    }
    return found;
  }

  /** Calls the program; the page and what the terminal said. */
  private String said(String verb, String... flags) throws IOException {
    Path out = folder.resolve(verb + flags.length);
    List<String> args = new ArrayList<>(List.of(verb, plant().toString(), "--out", out.toString()));
    args.addAll(List.of(flags));
    CommandCall call = CommandCall.of(args.toArray(String[]::new));
    assertThat(call.code()).as(call.err()).isZero();
    String page = Files.readString(out.resolve("report.html"));
    try (Reader record = Files.newBufferedReader(out.resolve("record.json"))) {
      Answer again = RecordFile.read("record.json", record);
      assertThat(ReportPage.html(again, new Wording(UnitSystem.US, Locale.US)))
          .containsIgnoringCase("kenaf straw");
    }
    String terminal = call.out() + call.err();
    assertThat(rawNames(terminal)).as("terminal of " + verb).isEmpty();
    assertThat(rawNames(read(page))).as("page of " + verb).isEmpty();
    return read(page) + terminal;
  }

  @Test
  void aRawNameWouldBeNoticed() {
    assertThat(
            rawNames(
                read(
                    "<p>carry-over of stalk_line, line.stalk_line.throughput and <code>stalk_line</code></p>")))
        .hasSize(1);
  }

  @Test
  void aRunReadsTheTitlesOfWhatThePlantHas() throws IOException {
    assertThat(said("run", "--replications", "3", "--locale", "en-US", "--units", "us"))
        .contains(
            "Straw table",
            "Ripper",
            "Bast press",
            "Core silo",
            "Kessler KX grinder",
            "Sacker",
            "Ribbon",
            "Core",
            "Decortication",
            "Grab",
            "Ripper: wrapped rotor",
            "The Kessler KX grinder is the bottleneck",
            "What limits the decortication",
            "Kenaf straw")
        .doesNotContain("Hammer mill", "Separating saw", "separating saw");
  }

  @Test
  void aCheckReadsThemToo() throws IOException {
    assertThat(said("check", "--option", "bigger_mill"))
        .contains("Kessler KX grinder", "30 hp grinder", "Grab");
  }

  @Test
  void optionsAreReadByTheirTitlesAloneAndTogether() throws IOException {
    assertThat(
            said(
                "compare",
                "--replications",
                "3",
                "--service-lives",
                "2",
                "--gain",
                "--among",
                "bigger_mill,bigger_mill+second_spout",
                "--tornado",
                "machines.saw.power=20%"))
        .contains(
            "power of the ripper",
            "30 hp grinder + twin sacker",
            "long daylight",
            "the plant as it stands",
            "Kessler KX grinder: own rate");
  }

  @Test
  void plansAreReadByTheirTitlesAndWhatAPlanAddsByItsOwn() throws IOException {
    assertThat(said("season", "--replications", "3"))
        .contains(
            "Ten-hour day", "Long daylight", "spare mill", "the season as it stands", "Roof fan");
  }

  @Test
  void aYardReadsThemToo() throws IOException {
    assertThat(said("yard", "--replications", "3", "--gain"))
        .contains("North Barn", "kenaf straw", "Kessler KX grinder")
        .doesNotContain("Hammer mill", "Bale shed");
  }

  @Test
  void aGridReadsThemToo() throws IOException {
    assertThat(
            said("compare", "--replications", "3", "--vary", "machines.saw.power=40hp..60hp..10hp"))
        .contains(
            "power of the ripper, hp",
            "power of the ripper from 40 hp to 60 hp",
            "30 hp grinder",
            "Twin sacker");
  }

  @Test
  void tablesForProgramsKeepNames() throws IOException {
    said("run", "--replications", "3");
    assertThat(Files.readString(folder.resolve("run2").resolve("summary.csv")))
        .contains("line.stalk_line.throughput")
        .doesNotContain("Decortication");
  }
}
