package hurdline.table;

import com.google.gson.Gson;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.stream.JsonWriter;
import hurdline.answer.Answer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.GridAnswer;
import hurdline.answer.PaperAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.util.stream.Stream;

/** An answer as JSON, both ways: {@code record.json}, and what {@code --json} prints. */
public final class RecordFile {
  private static final int FORMAT = 1;
  private static final Gson GSON = Json.gson();

  /** Each kind of answer with the verb that its record names. */
  private enum Kind {
    RUN("run", RunAnswer.class),
    CHECK("check", PaperAnswer.class),
    COMPARE("compare", CompareAnswer.class),
    SEASON("season", SeasonAnswer.class),
    YARD("yard", YardAnswer.class),
    GRID("grid", GridAnswer.class);

    private final String verb;
    private final Class<? extends Answer> type;

    Kind(String verb, Class<? extends Answer> type) {
      this.verb = verb;
      this.type = type;
    }
  }

  private RecordFile() {}

  /**
   * Writes the answer with its verb; the replications themselves are left to {@code measures.csv}.
   */
  public static void write(Answer answer, Writer out) throws IOException {
    JsonWriter json = GSON.newJsonWriter(out);
    json.beginObject();
    json.name("record").value(FORMAT);
    json.name("verb").value(verb(answer));
    json.name("answer");
    GSON.toJson(answer, answer.getClass(), json);
    json.endObject();
    out.write('\n');
    out.flush();
  }

  /**
   * Reads an answer back.
   *
   * @throws IOException if it cannot be read or is no such record
   */
  public static Answer read(Reader in) throws IOException {
    try {
      JsonObject envelope = JsonParser.parseReader(in).getAsJsonObject();
      if (envelope.get("record").getAsInt() != FORMAT) {
        throw new IOException(
            "record format " + envelope.get("record") + " is not known; expected " + FORMAT);
      }
      return GSON.fromJson(envelope.get("answer"), type(envelope.get("verb").getAsString()));
    } catch (JsonParseException | IllegalStateException | NullPointerException e) {
      throw new IOException("this is no record of hurdline: " + e.getMessage(), e);
    }
  }

  private static String verb(Answer answer) {
    return Stream.of(Kind.values())
        .filter(kind -> kind.type.isInstance(answer))
        .findFirst()
        .orElseThrow(() -> new AssertionError(answer.getClass() + " has no verb"))
        .verb;
  }

  private static Class<? extends Answer> type(String verb) throws IOException {
    return Stream.of(Kind.values())
        .filter(kind -> kind.verb.equals(verb))
        .findFirst()
        .orElseThrow(
            () ->
                new IOException(
                    "verb " + verb + " is not known; expected run, check, compare, season, yard or grid"))
        .type;
  }
}
