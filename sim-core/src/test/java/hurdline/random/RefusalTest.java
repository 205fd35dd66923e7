package hurdline.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the constructors refuse, and how they say it. */
class RefusalTest {
  static Stream<Distribution> ofNumbers() {
    return Distributions.all().stream()
        .map(Distributions.Case::distribution)
        .filter(one -> !(one instanceof Empirical));
  }

  @ParameterizedTest
  @MethodSource("ofNumbers")
  void noParameterMayBeNaN(Distribution good) throws ReflectiveOperationException {
    Object[] parameters = parametersOf(good);
    for (int bad = 0; bad < parameters.length; bad++) {
      Object[] changed = parameters.clone();
      changed[bad] = Double.NaN;
      assertThatThrownBy(() -> construct(good, changed))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("NaN")
          .hasMessageContaining("expected");
    }
    assertThat(construct(good, parameters)).isEqualTo(good);
  }

  /** Only the ends of a cut may be infinite; every distribution has a parameter that may not. */
  @ParameterizedTest
  @MethodSource("ofNumbers")
  void noMeanSpreadOrShapeMayBeInfinite(Distribution good) throws ReflectiveOperationException {
    Object[] parameters = parametersOf(good);
    int mustBeFinite = parameters.length - (cuts(good) ? 2 : 0);
    for (int bad = 0; bad < mustBeFinite; bad++) {
      Object[] changed = parameters.clone();
      changed[bad] = Double.POSITIVE_INFINITY;
      assertThatThrownBy(() -> construct(good, changed))
          .isInstanceOf(IllegalArgumentException.class);
    }
    assertThat(mustBeFinite).isPositive();
  }

  private static boolean cuts(Distribution one) {
    return one instanceof Normal
        || one instanceof Lognormal
        || one instanceof Exponential
        || one instanceof Gamma
        || one instanceof Weibull;
  }

  @Test
  void anObservedAmountMayNotBeNaNAndThereMustBeOne() {
    refused(() -> Empirical.of(1, Double.NaN), "observed value is NaN; expected a finite number");
    refused(
        () -> new Empirical(List.of()),
        "values are 0 in number; expected at least 1 observed amount");
  }

  @Test
  void eachMessageNamesTheValueAndTheBound() {
    refused(
        () -> new Constant(Double.POSITIVE_INFINITY),
        "value is Infinity; expected a finite number");
    refused(() -> Normal.of(5, -1), "sd is -1.0; expected 0 or above");
    refused(() -> new Normal(5, 1, 7, 6), "low is 7.0; expected below high, 6.0");
    refused(() -> Lognormal.of(0, 1), "mean is 0.0; expected above 0");
    refused(() -> Exponential.of(-3), "mean is -3.0; expected above 0");
    refused(() -> Gamma.of(-1, 1), "mean is -1.0; expected above 0");
    refused(() -> Weibull.of(0, 2), "shape is 0.0; expected above 0");
    refused(() -> Weibull.of(2, -0.0), "scale is -0.0; expected above 0");
    refused(() -> new Uniform(3, 2), "low is 3.0; expected at most high, 2.0");
    refused(() -> new Triangular(1, 5, 4), "mode is 5.0; expected at most high, 4.0");
    refused(
        () -> new Beta(2, 0.1, 0, 1), "mean is 2.0; expected above low, 0.0, and below high, 1.0");
    refused(
        () -> new Beta(0.5, 0.5, 0, 1), "sd is 0.5; expected below 0.5 for this mean and range");
  }

  @Test
  void aRangeThatHoldsNothingIsRefused() {
    String none =
        "low %s to high %s holds none of the distribution; expected a range it can fall in";
    refused(() -> new Normal(0, 1, 50, 60), none.formatted(50.0, 60.0));
    refused(() -> new Lognormal(18, 10, -5, 0), none.formatted(-5.0, 0.0));
    refused(() -> new Exponential(9, -3, -1), none.formatted(-3.0, -1.0));
    refused(() -> new Weibull(2, 9, -3, 0), none.formatted(-3.0, 0.0));
    refused(() -> new Gamma(30, 12, -3, -1), none.formatted(-3.0, -1.0));
    refused(
        () -> new Normal(5, 0, 6, 7), "mean is 5.0 with sd 0; expected inside low 6.0 to high 7.0");
  }

  private static void refused(ThrowingCallable making, String message) {
    assertThatThrownBy(making).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
  }

  private static Object[] parametersOf(Distribution one) throws ReflectiveOperationException {
    List<Object> values = new ArrayList<>();
    for (RecordComponent component : one.getClass().getRecordComponents()) {
      values.add(component.getAccessor().invoke(one));
    }
    return values.toArray();
  }

  private static Object construct(Distribution like, Object[] parameters)
      throws ReflectiveOperationException {
    Class<?>[] types = new Class<?>[parameters.length];
    Arrays.fill(types, double.class);
    try {
      return like.getClass().getDeclaredConstructor(types).newInstance(parameters);
    } catch (InvocationTargetException refused) {
      throw (RuntimeException) refused.getCause();
    }
  }
}
