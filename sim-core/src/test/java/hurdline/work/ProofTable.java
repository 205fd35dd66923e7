package hurdline.work;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page {@code line-configs/PROOF.md}: what the engine gives beside what others' mathematics says. */
final class ProofTable {
  /** A claim and how it fared; {@code error} is the standard error of {@code got}. */
  record Row(String claim, String unit, double reference, double got, double error) {
    double errorsOff() {
      return (got - reference) / error;
    }
  }

  private final TreeMap<String, String> sources = new TreeMap<>();
  private final TreeMap<String, List<Row>> sections = new TreeMap<>();

  /** Tests come in any order: sections are put in order by title. */
  void section(String title, String source) {
    sources.put(title, source);
    sections.put(title, new ArrayList<>());
  }

  Row add(String title, Row row) {
    sections.get(title).add(row);
    return row;
  }

  int sections() {
    return sections.size();
  }

  int rows() {
    return sections.values().stream().mapToInt(List::size).sum();
  }

  void write(Path root) {
    StringBuilder page = new StringBuilder();
    page.append("# Proof against the outside\n\n");
    page.append("Written by `scripts/proof` on ").append(LocalDate.now());
    page.append(", hurdline ").append(version(root)).append("; do not edit by hand.\n\n");
    page.append(
        """
        Each line is a plant whose answer is known without this program. *Reference* is computed from the published formula
        or model named above its table, *got* is the mean over replications of the simulated plant, *off* the difference in
        standard errors of that mean. Seeds are fixed. Where all is right, about one line in 150 is off by more than 3.
        The run fails beyond 3.5 (beyond 3 in the last table), or where a standard error of throughput in tables 1 to 3 is above 0.1 %.
        A machine is written as rate (hours at work between stops, mean repair).
        "From memory" means that the work was not at hand when its name was written down.
        """);
    for (String title : sections.keySet()) {
      page.append("\n## ").append(title).append("\n\n").append(sources.get(title)).append("\n\n");
      page.append("| claim | unit | reference | got | standard error | off |\n|---|---|---:|---:|---:|---:|\n");
      for (Row row : sections.get(title)) {
        page.append(
            String.format(
                Locale.ROOT,
                "| %s | %s | %.5g | %.5g | %.2g | %+.1f |%n",
                row.claim, row.unit, row.reference, row.got, row.error, row.errorsOff()).replace("\r", ""));
      }
    }
    try {
      Files.writeString(root.resolve("line-configs/PROOF.md"), page, StandardCharsets.UTF_8);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  private static String version(Path root) {
    try {
      Matcher found =
          Pattern.compile("<version>([^<]*)</version>").matcher(Files.readString(root.resolve("pom.xml")));
      return found.find() ? found.group(1) : "?";
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
