package hurdline.table;

import com.google.gson.ExclusionStrategy;
import com.google.gson.FieldAttributes;
import com.google.gson.FormattingStyle;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonParseException;
import com.google.gson.TypeAdapter;
import com.google.gson.TypeAdapterFactory;
import com.google.gson.internal.LazilyParsedNumber;
import com.google.gson.reflect.TypeToken;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import com.google.gson.stream.JsonWriter;
import hurdline.answer.Answer;
import hurdline.answer.Capacity;
import hurdline.answer.Day;
import hurdline.answer.FitAnswer;
import hurdline.answer.FitRow;
import hurdline.answer.GridAnswer;
import hurdline.answer.Header;
import hurdline.answer.LineFlow;
import hurdline.answer.Outline;
import hurdline.answer.Replayed;
import hurdline.answer.Samples;
import hurdline.answer.Trace;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * How records become JSON and come back: rows on one line each, {@code null} for what is not
 * defined.
 */
final class Json {
  private Json() {}

  static Gson gson() {
    return new GsonBuilder()
        .serializeNulls()
        .disableHtmlEscaping()
        .setFormattingStyle(FormattingStyle.PRETTY)
        .registerTypeAdapter(double.class, new NumberOrNull())
        .registerTypeAdapter(Double.class, new NumberOrNull())
        .registerTypeAdapter(LocalDate.class, new IsoText<>(LocalDate::parse))
        .registerTypeAdapter(LocalDateTime.class, new IsoText<>(LocalDateTime::parse))
        .setFieldNamingStrategy(new CsvNames())
        .registerTypeAdapterFactory(new WordOfEnum())
        .registerTypeAdapterFactory(new OneLineEach())
        .registerTypeAdapterFactory(new FactByKind())
        .setExclusionStrategies(new WithoutReplications())
        .create();
  }

  /** Whether a part of a record is not in the JSON. */
  static boolean isLeftOut(Class<?> record, String part, Class<?> type) {
    return type == Samples.class
        || type == Replayed.class
        || type == GridAnswer.All.class
        || record == Trace.class && part.equals("rows")
        || record == FitAnswer.class && part.equals("rows") // account.csv has them
        || record == FitRow.class && part.equals("draws"); // draws.csv has them
  }

  /** A choice in small letters, as tables have it. */
  private static final class WordOfEnum implements TypeAdapterFactory {
    @Override
    public <T> TypeAdapter<T> create(Gson gson, TypeToken<T> type) {
      Class<? super T> raw = type.getRawType();
      if (!raw.isEnum()) {
        return null;
      }
      return new TypeAdapter<>() {
        @Override
        public void write(JsonWriter out, T value) throws IOException {
          out.value(((Enum<?>) value).name().toLowerCase(Locale.ROOT));
        }

        @Override
        @SuppressWarnings("unchecked")
        public T read(JsonReader in) throws IOException {
          String word = in.nextString();
          return Stream.of((T[]) raw.getEnumConstants())
              .filter(value -> ((Enum<?>) value).name().equalsIgnoreCase(word))
              .findFirst()
              .orElseThrow(() -> new JsonParseException("\"" + word + "\" is not known"));
        }
      };
    }
  }

  /** A double by its exact text; JSON knows no NaN. */
  private static final class NumberOrNull extends TypeAdapter<Double> {
    @Override
    public void write(JsonWriter out, Double value) throws IOException {
      String text = value == null ? "" : Exact.text(value);
      if (text.isEmpty()) {
        out.nullValue();
      } else {
        out.value(new LazilyParsedNumber(text));
      }
    }

    @Override
    public Double read(JsonReader in) throws IOException {
      if (in.peek() == JsonToken.NULL) {
        in.nextNull();
        return Double.NaN;
      }
      return in.nextDouble();
    }
  }

  /** A date or time as it writes itself. */
  private static final class IsoText<T> extends TypeAdapter<T> {
    private final Function<String, T> parse;

    IsoText(Function<String, T> parse) {
      this.parse = parse;
    }

    @Override
    public void write(JsonWriter out, T value) throws IOException {
      out.value(value.toString());
    }

    @Override
    public T read(JsonReader in) throws IOException {
      return parse.apply(in.nextString());
    }
  }

  /**
   * Keeps each row on a line of its own, so that a version control's difference is readable and the
   * file small.
   */
  private static final class OneLineEach implements TypeAdapterFactory {
    private static final Set<Class<?>> SPREAD =
        Set.of(
            Header.class,
            Outline.class,
            LineFlow.class,
            Capacity.class,
            Capacity.Line.class,
            Capacity.Limits.class,
            Trace.class,
            Day.class);

    @Override
    public <T> TypeAdapter<T> create(Gson gson, TypeToken<T> type) {
      Class<? super T> raw = type.getRawType();
      if (!raw.isRecord() || Answer.class.isAssignableFrom(raw) || SPREAD.contains(raw)) {
        return null;
      }
      TypeAdapter<T> usual = gson.getDelegateAdapter(this, type);
      return new TypeAdapter<>() {
        @Override
        public void write(JsonWriter out, T value) throws IOException {
          out.jsonValue(usual.toJson(value));
        }

        @Override
        public T read(JsonReader in) throws IOException {
          return usual.read(in);
        }
      };
    }
  }

  /**
   * The replications are in measures.csv, the events of a trace in trace.csv, all of a grid in
   * grid.csv.
   */
  private static final class WithoutReplications implements ExclusionStrategy {
    @Override
    public boolean shouldSkipField(FieldAttributes field) {
      return isLeftOut(field.getDeclaringClass(), field.getName(), field.getDeclaredClass());
    }

    @Override
    public boolean shouldSkipClass(Class<?> type) {
      return false;
    }
  }
}
