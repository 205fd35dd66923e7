package hurdline.table;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.table.Proof.Claim;
import hurdline.table.Proof.OffIn;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ProofTest {
  private static final Proof PACKED = Proof.packed();

  @Test
  void everyClaimHasASourceAndIsAsNearAsItsPageSays() {
    assertThat(PACKED.claims()).hasSizeGreaterThan(200);
    for (Map.Entry<String, List<Claim>> section : PACKED.byTitle().entrySet()) {
      assertThat(section.getValue().get(0).source()).as(section.getKey()).isNotBlank();
      assertThat(section.getValue())
          .allSatisfy(claim -> assertThat(Math.abs(claim.off())).isLessThan(60));
    }
    assertThat(PACKED.claims())
        .filteredOn(claim -> claim.offIn() == OffIn.STANDARD_ERRORS)
        .hasSizeGreaterThan(100)
        .allSatisfy(claim -> assertThat(Math.abs(claim.off())).isLessThan(3.5))
        .allSatisfy(claim -> assertThat(claim.standardError()).isNotBlank());
  }

  /** What is off is worked out again from the figures beside it, as far as their digits reach. */
  @Test
  void whatIsOffFollowsFromTheFiguresBesideIt() {
    assertThat(PACKED.claims())
        .filteredOn(claim -> claim.offIn() == OffIn.STANDARD_ERRORS)
        .allSatisfy(
            claim -> {
              double off =
                  (Double.parseDouble(claim.got()) - Double.parseDouble(claim.reference()))
                      / Double.parseDouble(claim.standardError());
              assertThat(off)
                  .as(claim.claim())
                  .isCloseTo(claim.off(), org.assertj.core.api.Assertions.within(0.6));
            });
  }

  /** The page for people and the table for the report are written in one go. */
  @Test
  void thePageSaysTheSameAsThePackedTable() throws IOException {
    String page =
        Files.readString(Path.of(System.getProperty("hurdline.root"), "line-configs", "PROOF.md"));
    assertThat(page).contains("on " + PACKED.date() + ", hurdline " + PACKED.version());
    assertThat(PACKED.claims())
        .allSatisfy(
            claim ->
                assertThat(page)
                    .contains(
                        "| "
                            + claim.claim()
                            + " | "
                            + claim.unit()
                            + " | "
                            + claim.reference()
                            + " | "
                            + claim.got()
                            + " |"));
  }
}
