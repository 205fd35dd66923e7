package hurdline.audit;

import static org.junit.jupiter.api.TestInstance.Lifecycle.PER_CLASS;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The answer of one command about a small plant, audited once, and then with one fault after
 * another.
 */
@TestInstance(PER_CLASS)
abstract class AnswerAuditTest {
  private WrittenAnswer answer;
  private Audit audit;

  /** Calls the command. */
  abstract WrittenAnswer answer(Path dir) throws IOException;

  abstract Audit audit(WrittenAnswer answer, Path dir) throws IOException;

  /** The kinds of comparison that there must be, each with the least count of figures. */
  abstract Map<String, Integer> least();

  /** Pairs of a kind of comparison and a fault that it must find. */
  abstract Stream<Arguments> faults();

  @BeforeAll
  void theCommandIsCalled(@TempDir Path dir) throws IOException {
    answer = answer(dir);
    audit = audit(answer, dir);
  }

  @Test
  void everyFigureFollowsFromTheReplications() {
    audit.closes(answer, least());
  }

  @ParameterizedTest
  @MethodSource("faults")
  void aFaultIsNoticed(String what, UnaryOperator<WrittenAnswer> fault) {
    audit.notices(what, answer, fault);
  }
}
