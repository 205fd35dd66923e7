package hurdline.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * What the long tests have written down about the program: its figures beside answers known without
 * it.
 *
 * @param version of the program that was tested
 * @param date on which
 */
public record Proof(String version, String date, List<Claim> claims) {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

  /** What the distance {@code off} is counted in. */
  public enum OffIn {
    STANDARD_ERRORS("standard errors"),
    LAST_DIGITS("last digits"),
    PERCENT("percent");

    private final String words;

    OffIn(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    private static OffIn of(String words) {
      for (OffIn one : values()) {
        if (one.words.equals(words)) {
          return one;
        }
      }
      throw new IllegalArgumentException(
          "\"" + words + "\" is nothing that a distance is counted in");
    }
  }

  /**
   * One answer known from outside and what the program gave; figures as they were written.
   *
   * @param standardError of {@code got}, empty where nothing is drawn
   * @param off from {@code reference} to {@code got}
   */
  public record Claim(
      String title,
      String source,
      String claim,
      String unit,
      String reference,
      String got,
      String standardError,
      double off,
      OffIn offIn) {}

  public Proof {
    claims = List.copyOf(claims);
  }

  /** The one that is packed with the program. */
  public static Proof packed() {
    try (InputStream in = Proof.class.getResourceAsStream("/line-configs/proof.csv");
        CSVParser rows =
            CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), FORMAT)) {
      List<CSVRecord> records = rows.getRecords();
      CSVRecord first = records.get(0);
      return new Proof(
          first.get("version"), first.get("date"), records.stream().map(Proof::claim).toList());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Claim claim(CSVRecord row) {
    return new Claim(
        row.get("title"),
        row.get("source"),
        row.get("claim"),
        row.get("unit"),
        row.get("reference"),
        row.get("got"),
        row.get("standard_error"),
        Double.parseDouble(row.get("off")),
        OffIn.of(row.get("off_in")));
  }

  /** Claims by the title that they stand under, in order. */
  public Map<String, List<Claim>> byTitle() {
    Map<String, List<Claim>> byTitle = new LinkedHashMap<>();
    claims.forEach(
        claim ->
            byTitle
                .computeIfAbsent(claim.title(), title -> new java.util.ArrayList<>())
                .add(claim));
    return byTitle;
  }
}
