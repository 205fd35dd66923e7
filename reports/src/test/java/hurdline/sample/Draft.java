package hurdline.sample;

import java.io.Serializable;
import java.lang.invoke.SerializedLambda;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A record that is made by the names of its components, so that a sample says only what it is about
 * and a new component touches no sample: {@code Draft.from(year).with(RunAnswer::summary,
 * rows).made()}. For tests only, since it looks into records by reflection.
 *
 * @param <R> the record
 */
public final class Draft<R extends Record> {
  private final Class<R> type;
  private final RecordComponent[] components;
  private final Object[] values;

  /** A component, as a reference to its accessor. */
  public interface Part<R, T> extends Function<R, T>, Serializable {}

  private Draft(Class<R> type) {
    this.type = type;
    components = type.getRecordComponents();
    values = new Object[components.length];
  }

  /** Nothing yet: no number, no text, no rows, and of a record what it says is none. */
  public static <R extends Record> Draft<R> of(Class<R> type) {
    Draft<R> draft = new Draft<>(type);
    for (int at = 0; at < draft.values.length; at++) {
      draft.values[at] = nothing(draft.components[at].getType());
    }
    return draft;
  }

  /** What a record has. */
  @SuppressWarnings("unchecked")
  public static <R extends Record> Draft<R> from(R record) {
    Draft<R> draft = new Draft<>((Class<R>) record.getClass());
    for (int at = 0; at < draft.values.length; at++) {
      Method accessor = draft.components[at].getAccessor();
      accessor.setAccessible(true);
      draft.values[at] = call(() -> accessor.invoke(record));
    }
    return draft;
  }

  /**
   * With other values of all components.
   *
   * @param change of a name and its value
   */
  Draft<R> change(BiFunction<String, Object, Object> change) {
    for (int at = 0; at < values.length; at++) {
      values[at] = change.apply(components[at].getName(), values[at]);
    }
    return this;
  }

  /** With another value of one component. */
  public <T> Draft<R> with(Part<R, T> part, T value) {
    return with(nameOf(part), value);
  }

  /** With the same value of several components. */
  @SafeVarargs
  public final <T> Draft<R> each(T value, Part<R, T>... parts) {
    for (Part<R, T> part : parts) {
      with(part, value);
    }
    return this;
  }

  private Draft<R> with(String name, Object value) {
    for (int at = 0; at < components.length; at++) {
      if (components[at].getName().equals(name)) {
        values[at] = value;
        return this;
      }
    }
    throw new IllegalArgumentException(type + " has no " + name);
  }

  public R made() {
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class[]::new);
    return call(
        () -> {
          Constructor<R> constructor = type.getDeclaredConstructor(types);
          constructor.setAccessible(true);
          return constructor.newInstance(values);
        });
  }

  private static Object nothing(Class<?> type) {
    if (type == double.class) {
      return Double.NaN;
    } else if (type == int.class || type == long.class) {
      return 0;
    } else if (type == boolean.class) {
      return false;
    } else if (type == String.class) {
      return "";
    } else if (type == List.class) {
      return List.of();
    }
    return Arrays.stream(type.getDeclaredMethods())
        .filter(method -> method.getName().equals("none") && method.getParameterCount() == 0)
        .map(method -> call(() -> method.invoke(null)))
        .findFirst()
        .orElse(null);
  }

  /** A reference to a method keeps its name where it may be written and read back. */
  private static String nameOf(Part<?, ?> part) {
    return call(
        () -> {
          Method written = part.getClass().getDeclaredMethod("writeReplace");
          written.setAccessible(true);
          return ((SerializedLambda) written.invoke(part)).getImplMethodName();
        });
  }

  private interface Call<T> {
    T made() throws ReflectiveOperationException;
  }

  private static <T> T call(Call<T> call) {
    try {
      return call.made();
    } catch (InvocationTargetException e) {
      throw e.getCause() instanceof RuntimeException refused
          ? refused
          : new IllegalStateException(e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
