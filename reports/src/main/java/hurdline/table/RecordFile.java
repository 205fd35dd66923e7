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

/** An answer as JSON, both ways: {@code record.json}, and what {@code --json} prints. */
public final class RecordFile {
  private static final int FORMAT = 1;
  private static final Gson GSON = Json.gson();

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
    if (answer instanceof RunAnswer) {
      return "run";
    }
    if (answer instanceof PaperAnswer) {
      return "check";
    }
    if (answer instanceof CompareAnswer) {
      return "compare";
    }
    if (answer instanceof SeasonAnswer) {
      return "season";
    }
    if (answer instanceof GridAnswer) {
      return "grid";
    }
    if (answer instanceof YardAnswer) {
      return "yard";
    }
    throw new AssertionError(answer.getClass() + " has no verb");
  }

  private static Class<? extends Answer> type(String verb) throws IOException {
    return switch (verb) {
      case "run" -> RunAnswer.class;
      case "check" -> PaperAnswer.class;
      case "compare" -> CompareAnswer.class;
      case "season" -> SeasonAnswer.class;
      case "yard" -> YardAnswer.class;
      case "grid" -> GridAnswer.class;
      default ->
          throw new IOException(
              "verb " + verb + " is not known; expected run, check, compare, season, yard or grid");
    };
  }
}
