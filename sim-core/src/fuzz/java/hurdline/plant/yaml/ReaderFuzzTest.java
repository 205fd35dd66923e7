package hurdline.plant.yaml;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import org.junit.jupiter.api.Tag;

/**
 * Inputs sought by what they make the reader do: a file from scratch, or the plant with every key,
 * edited.
 *
 * <p>Run by {@code scripts/proof}, for two minutes. What breaks the promise goes to {@code
 * fuzz-corpus} beside {@link FuzzCorpusTest}, which every test run reads.
 */
@Tag("proof")
class ReaderFuzzTest {
  private static final int MOST_EDITS = 6;
  private static final String WHOLE = Edited.plantFile().text();

  @FuzzTest(maxDuration = "2m")
  void whateverStandsInAFileItIsReadOrRefusedInWords(FuzzedDataProvider data) {
    String text = data.consumeBoolean() ? data.consumeRemainingAsString() : edited(data);
    try {
      FuzzCorpusTest.keepsThePromise(text);
    } catch (Throwable broken) {
      throw new AssertionError("The file that breaks the promise:\n" + text, broken);
    }
  }

  private static String edited(FuzzedDataProvider data) {
    StringBuilder text = new StringBuilder(WHOLE);
    for (int edit = data.consumeInt(1, MOST_EDITS); edit > 0 && data.remainingBytes() > 0; edit--) {
      int from = data.consumeInt(0, text.length());
      int to = Math.min(text.length(), from + data.consumeInt(0, 60));
      text.replace(from, to, data.consumeString(40));
    }
    return text.toString();
  }
}
