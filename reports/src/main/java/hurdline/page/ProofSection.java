package hurdline.page;

import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GridColumns;
import hurdline.table.Proof;
import hurdline.table.Proof.Claim;
import hurdline.table.Proof.OffIn;
import hurdline.text.Wording;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** The appendix that says why the figures can be believed, and what that does not say. */
final class ProofSection {
  private final Proof proof;
  private final Wording wording;

  private ProofSection(Proof proof, Wording wording) {
    this.proof = proof;
    this.wording = wording;
  }

  static Section section(Wording wording) {
    return new Section(
        "proof",
        "Why these figures can be believed",
        true,
        html -> new ProofSection(Proof.packed(), wording).write(html));
  }

  private void write(Html html) {
    html.paragraph(
        "Before each release the program is verified against "
            + wording.count(proof.claims().size())
            + " answers that are known without it: published formulas, certified data, printed tables and plants solved by"
            + " hand. The table is of version "
            + proof.version()
            + ", written on "
            + wording.date(LocalDate.parse(proof.date()))
            + ".");
    html.table("what was verified", summary());
    html.paragraph(simulated());
    html.paragraph(
        "This shows that the sums are right. It does not show that a plant file is: rates, stops, yields and prices are"
            + " as good as what was measured or asked.");
    html.raw("<details>\n<summary>Every case, its source, and what the program gives</summary>\n");
    html.paragraph("Cases are in the units of their sources.");
    proof.byTitle().forEach((title, claims) -> writeClaims(html, title, claims));
    html.raw("</details>\n");
  }

  private Chart.Grid summary() {
    return new GridColumns<Map.Entry<String, List<Claim>>>(wording)
        .text("what", Map.Entry::getKey)
        .text("cases", of -> wording.count(of.getValue().size()))
        .text("largest deviation", of -> wording.plain(Math.abs(worst(of.getValue()).off())))
        .text("in", of -> worst(of.getValue()).offIn().words())
        .of(proof.byTitle().entrySet());
  }

  /** Of the kind that the first claim is of. */
  private static Claim worst(List<Claim> claims) {
    OffIn kind = claims.get(0).offIn();
    return claims.stream()
        .filter(claim -> claim.offIn() == kind)
        .max(Comparator.comparingDouble(claim -> Math.abs(claim.off())))
        .orElseThrow();
  }

  private String simulated() {
    List<Claim> drawn =
        proof.claims().stream().filter(c -> c.offIn() == OffIn.STANDARD_ERRORS).toList();
    long beyond2 = drawn.stream().filter(claim -> Math.abs(claim.off()) > 2).count();
    return wording.count(drawn.size())
        + " of the answers are means over simulated years, whose standard error is known: a program that is right deviates by more"
        + " than 2 standard errors about once in 20. It does so "
        + beyond2
        + (beyond2 == 1 ? " time" : " times")
        + " here.";
  }

  private void writeClaims(Html html, String title, List<Claim> claims) {
    html.element("h3", title).paragraph(claims.get(0).source());
    html.table(
        title,
        new GridColumns<Claim>(wording)
            .text("case", Claim::claim)
            .text("unit", Claim::unit)
            .text("reference", claim -> wording.marks(claim.reference()))
            .text("program", claim -> wording.marks(claim.got()))
            .text("standard error", claim -> wording.marks(claim.standardError()))
            .text("deviation", claim -> wording.plain(claim.off()) + " " + claim.offIn().words())
            .of(claims));
  }
}
