package hurdline.simulation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the program gives beside what others' mathematics and tables say: the page {@code
 * line-configs/PROOF.md} and, for the report, the same as {@code line-configs/proof.csv}. The tests
 * that take part fill one table; the last writes it.
 */
public final class ProofTable {
  public static final ProofTable PAGE = new ProofTable();

  private static final int SECTIONS = 21;
  private static final String SIMULATED = "standard errors";
  private static final String WORKED_OUT = "last digits";
  private static final String MEASURED = "percent";

  /** One line of a section's table. */
  public sealed interface Line {
    String claim();

    String unit();

    /** As it is printed. */
    String said();

    double got();

    /** In standard errors, in units of the last digit printed, or in percent. */
    double off();
  }

  /**
   * A claim about a mean over replications and how it fared; {@code error} is the standard error of
   * {@code got}.
   */
  record Row(String claim, String unit, double reference, double got, double error)
      implements Line {
    double errorsOff() {
      return (got - reference) / error;
    }

    @Override
    public double off() {
      return errorsOff();
    }

    @Override
    public String said() {
      return String.format(Locale.ROOT, "%.5g", reference);
    }
  }

  /** A figure that is worked out, without chance, beside the one that is printed. */
  public record Figure(String claim, String unit, String said, double got) implements Line {
    @Override
    public double off() {
      BigDecimal printed = new BigDecimal(said);
      return new BigDecimal(got).subtract(printed).doubleValue() / printed.ulp().doubleValue();
    }
  }

  /** A figure of the law that the program uses beside a measured one; off in percent. */
  public record Measured(String claim, String unit, String said, double got) implements Line {
    @Override
    public double off() {
      return 100 * (got / Double.parseDouble(said) - 1);
    }
  }

  /**
   * What the example gives beside a range that was published; off from its nearer end in percent.
   */
  record Published(
      String claim, String unit, double low, double high, double got, double error, String why)
      implements Line {
    @Override
    public double off() {
      double nearer = Math.max(low, Math.min(high, got));
      return nearer == got ? 0 : 100 * (got / nearer - 1);
    }

    @Override
    public String said() {
      return low == high ? number(low) : number(low) + " to " + number(high);
    }

    private static String number(double value) {
      return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
  }

  private final Map<Integer, String> titles = new TreeMap<>();
  private final Map<Integer, String> sources = new TreeMap<>();
  private final Map<Integer, List<Line>> sections = new TreeMap<>();

  /** Tests come in any order: sections are put in order by number. */
  public void section(int number, String title, String source) {
    titles.put(number, title);
    sources.put(number, source);
    sections.put(number, new ArrayList<>());
  }

  public <L extends Line> L add(int section, L line) {
    sections.get(section).add(line);
    return line;
  }

  int rows(int section) {
    return sections.get(section).size();
  }

  /** A run of some of the tests only leaves the page as it is. */
  public void writeIfWhole() {
    if (sections.size() == SECTIONS) {
      Path root = Path.of(System.getProperty("hurdline.root"));
      write(root.resolve("line-configs/PROOF.md"), page(root));
      write(root.resolve("line-configs/proof.csv"), csv(root));
    }
  }

  private String page(Path root) {
    StringBuilder page = new StringBuilder("# Verification against known answers\n\n");
    page.append("Written by `scripts/proof` on ").append(LocalDate.now());
    page.append(", hurdline ").append(version(root)).append("; do not edit by hand.\n\n");
    page.append(
        """
        Each line is a case whose answer is known without this program. *Reference* is printed in, or computed from the
        formula of, the work named above its table. Where a plant is simulated, *simulated* is the mean over replications and *deviation* the
        difference in standard errors of that mean; seeds are fixed, and where all is right about one line in 150 deviates by more
        than 3. The run fails beyond 3.5 (beyond 3 in table 10), or where a standard error of throughput in tables 1 to 3 is above
        0.1 %. Where nothing is drawn, *deviation* is in units of the last digit of the reference, and the run fails beyond 0.5, or what
        is said above the table. Where the reference was measured, *deviation* is in percent, and the limit stands above the table.
        A machine is written as rate (running hours between stops, mean time to repair).
        Table 18 compares the example with figures of the trade.
        "From memory" means that the work was not at hand when its name was written down.

        That the tables of an answer agree with each other needs no reference from outside. `ThreePlantsAuditProofTest`, run with the same
        script, recomputes every table about three plants from the replications in `measures.csv` and compares record, page and terminal
        with the tables; it fails at the first figure that does not agree.
        """);
    titles.forEach(
        (number, title) -> {
          page.append("\n## ").append(number).append(". ").append(title).append("\n\n");
          page.append(sources.get(number)).append("\n\n");
          sections.get(number).stream()
              .map(Line::getClass)
              .distinct()
              .forEach(kind -> table(page, number, kind));
          page.setLength(page.length() - 1);
        });
    return page.toString();
  }

  private void table(StringBuilder page, int number, Class<?> kind) {
    page.append(
        kind == Row.class
            ? "| case | unit | reference | simulated | standard error | deviation |\n"
                + "|---|---|---:|---:|---:|---:|\n"
            : kind == Published.class
                ? "| figure | unit | published | example | standard error | source, and why outside"
                    + " | deviation |\n"
                    + "|---|---|---:|---:|---:|---|---:|\n"
                : "| case | unit | reference | computed | deviation |\n|---|---|---:|---:|---:|\n");
    sections.get(number).stream()
        .filter(kind::isInstance)
        .forEach(line -> page.append("| ").append(String.join(" | ", cells(line))).append(" |\n"));
    page.append('\n');
  }

  private static List<String> cells(Line line) {
    List<String> cells = new ArrayList<>(List.of(line.claim(), line.unit(), line.said()));
    if (line instanceof Row row) {
      cells.add(format("%.5g", row.got));
      cells.add(format("%.2g", row.error));
      cells.add(format("%+.1f", row.errorsOff()));
    } else if (line instanceof Figure figure) {
      cells.add(
          format("%." + Math.max(0, new BigDecimal(figure.said).scale() + 2) + "f", figure.got));
      cells.add(format("%+.2f", figure.off()));
    } else if (line instanceof Published published) {
      cells.add(format("%.4g", published.got));
      cells.add(format("%.2g", published.error));
      cells.add(published.why);
      cells.add(line.off() == 0 ? "inside" : format("%+.0f", line.off()) + " %");
    } else {
      cells.add(format("%.4g", line.got()));
      cells.add(format("%+.0f", line.off()) + " %");
    }
    return cells;
  }

  private static String format(String how, double number) {
    return String.format(Locale.ROOT, how, number);
  }

  private String csv(Path root) {
    StringBuilder csv =
        new StringBuilder(
            "version,date,number,title,source,claim,unit,reference,got,standard_error,off,off_in\n");
    titles.forEach(
        (number, title) ->
            sections
                .get(number)
                .forEach(
                    line -> {
                      List<String> cells = cells(line);
                      boolean simulated = line instanceof Row;
                      boolean drawn = simulated || line instanceof Published;
                      Map<String, String> row = new LinkedHashMap<>();
                      row.put("version", version(root));
                      row.put("date", LocalDate.now().toString());
                      row.put("number", Integer.toString(number));
                      row.put("title", title);
                      row.put(
                          "source",
                          line == sections.get(number).get(0)
                              ? sources.get(number).replace("*", "").replace("`", "")
                              : "");
                      row.put("claim", cells.get(0));
                      row.put("unit", cells.get(1));
                      row.put("reference", cells.get(2));
                      row.put("got", cells.get(3));
                      row.put("standard_error", drawn ? cells.get(4) : "");
                      row.put(
                          "off",
                          cells.get(cells.size() - 1).replace(" %", "").replace("inside", "0"));
                      row.put(
                          "off_in",
                          simulated ? SIMULATED : line instanceof Figure ? WORKED_OUT : MEASURED);
                      csv.append(
                              String.join(
                                  ",", row.values().stream().map(ProofTable::quoted).toList()))
                          .append('\n');
                    }));
    return csv.toString();
  }

  private static String quoted(String cell) {
    return cell.matches("[^\",\n]*") ? cell : "\"" + cell.replace("\"", "\"\"") + "\"";
  }

  private static void write(Path file, String text) {
    try {
      Files.writeString(file, text, StandardCharsets.UTF_8);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  private static String version(Path root) {
    try {
      Matcher found =
          Pattern.compile("<version>([^<]*)</version>")
              .matcher(Files.readString(root.resolve("pom.xml")));
      return found.find() ? found.group(1) : "?";
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
