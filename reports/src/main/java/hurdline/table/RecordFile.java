package hurdline.table;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.stream.JsonWriter;
import hurdline.answer.Answer;
import hurdline.answer.BacktestAnswer;
import hurdline.answer.CheckAnswer;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.FitAnswer;
import hurdline.answer.GridAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.problem.LocatedProblem;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.time.DateTimeException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** An answer as JSON, both ways: {@code record.json}, and what {@code --json} prints. */
public final class RecordFile {
  private static final int FORMAT = 3;
  private static final String EXPECTED =
      "the record.json that run, compare, season, yard, choose or check writes";
  private static final Pattern PLACE = Pattern.compile("line (\\d+) column (\\d+)");
  private static final Gson GSON = Json.gson();

  /** Each kind of answer with the verb that its record names. */
  private enum Kind {
    RUN("run", RunAnswer.class),
    CHECK("check", CheckAnswer.class),
    COMPARE("compare", CompareAnswer.class),
    SEASON("season", SeasonAnswer.class),
    YARD("yard", YardAnswer.class),
    GRID("grid", GridAnswer.class),
    CHOOSE("choose", ChooseAnswer.class),
    BACKTEST("backtest", BacktestAnswer.class),
    FIT("fit", FitAnswer.class);

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
    if (answer instanceof CheckAnswer) {
      writeProblems(List.of(), json);
    }
    json.name("answer");
    GSON.toJson(answer, answer.getClass(), json);
    json.endObject();
    out.write('\n');
    out.flush();
  }

  /** Writes what is wrong with a plant that a verb was asked about, of which there is no answer. */
  public static void write(String verb, List<LocatedProblem> problems, Writer out)
      throws IOException {
    JsonWriter json = GSON.newJsonWriter(out);
    json.beginObject();
    json.name("record").value(FORMAT);
    json.name("verb").value(verb);
    writeProblems(problems, json);
    json.endObject();
    out.write('\n');
    out.flush();
  }

  private static void writeProblems(List<LocatedProblem> problems, JsonWriter json)
      throws IOException {
    json.name("problems").beginArray();
    for (LocatedProblem problem : problems) {
      GSON.toJson(problem, LocatedProblem.class, json);
    }
    json.endArray();
  }

  /**
   * Reads an answer back.
   *
   * @param file its name, for messages
   * @throws RecordFault if it is no such record or not a whole one
   */
  public static Answer read(String file, Reader in) throws IOException {
    JsonObject envelope = envelope(file, in);
    refuseOtherFormats(file, envelope);
    Class<? extends Answer> type = type(file, envelope);
    if (!envelope.has("answer")) {
      throw fault(file, "answer is missing", "a whole record");
    }
    Optional<String> problem = RecordShape.problem(envelope.get("answer"), type, "answer");
    if (problem.isPresent()) {
      throw fault(file, problem.get(), "a record as it was written, not edited");
    }
    try {
      return GSON.fromJson(envelope.get("answer"), type);
    } catch (JsonParseException | DateTimeException | IllegalArgumentException e) {
      throw fault(file, e.getMessage(), "a record as it was written, not edited");
    }
  }

  private static JsonObject envelope(String file, Reader in) throws IOException {
    try {
      JsonElement read = JsonParser.parseReader(in);
      if (read.isJsonObject() && read.getAsJsonObject().has("record")) {
        return read.getAsJsonObject();
      }
    } catch (JsonParseException | NumberFormatException e) {
      Matcher place = PLACE.matcher(String.valueOf(e.getMessage()));
      String where = place.find() ? ":" + place.group(1) + ":" + place.group(2) : "";
      throw fault(file + where, "it is no JSON or ends too soon", EXPECTED);
    }
    throw fault(file, "it is no record of an answer", EXPECTED);
  }

  private static void refuseOtherFormats(String file, JsonObject envelope) throws RecordFault {
    String format = envelope.get("record").toString();
    if (!format.equals(Integer.toString(FORMAT))) {
      throw new RecordFault(
          file
              + ": record is of format "
              + format
              + "; expected "
              + FORMAT
              + ". Ask the plant file again, or use the version of hurdline that wrote it");
    }
  }

  private static RecordFault fault(String file, String said, String expected) {
    return new RecordFault(file + ": " + said + "; expected " + expected);
  }

  private static String verb(Answer answer) {
    return Stream.of(Kind.values())
        .filter(kind -> kind.type.isInstance(answer))
        .findFirst()
        .orElseThrow(() -> new AssertionError(answer.getClass() + " has no verb"))
        .verb;
  }

  private static Class<? extends Answer> type(String file, JsonObject envelope) throws RecordFault {
    String verb = envelope.has("verb") ? envelope.get("verb").toString() : "";
    for (Kind kind : Kind.values()) {
      if (verb.equals('"' + kind.verb + '"')) {
        return kind.type;
      }
    }
    throw fault(
        file,
        "verb " + verb + " is not known",
        "run, check, compare, season, yard, grid, choose, backtest or fit");
  }
}
