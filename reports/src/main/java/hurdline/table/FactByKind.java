package hurdline.table;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.TypeAdapter;
import com.google.gson.TypeAdapterFactory;
import com.google.gson.reflect.TypeToken;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonWriter;
import hurdline.answer.Fact;
import java.io.IOException;

/**
 * A fact on one line, beginning with the word of its kind: {@code
 * {"fact":"overflow","turned_away":false}}.
 */
final class FactByKind implements TypeAdapterFactory {
  private static final String KIND = "fact";

  @Override
  @SuppressWarnings("unchecked")
  public <T> TypeAdapter<T> create(Gson gson, TypeToken<T> type) {
    return Fact.class.isAssignableFrom(type.getRawType())
        ? (TypeAdapter<T>) new ByKind(gson, this)
        : null;
  }

  private static final class ByKind extends TypeAdapter<Fact> {
    private final Gson gson;
    private final TypeAdapterFactory factory;

    ByKind(Gson gson, TypeAdapterFactory factory) {
      this.gson = gson;
      this.factory = factory;
    }

    @Override
    public void write(JsonWriter out, Fact fact) throws IOException {
      JsonObject named = new JsonObject();
      named.addProperty(KIND, Fact.word(fact.getClass()));
      JsonParser.parseString(usual(fact.getClass()).toJson(fact))
          .getAsJsonObject()
          .entrySet()
          .forEach(part -> named.add(part.getKey(), part.getValue()));
      out.jsonValue(named.toString());
    }

    @Override
    public Fact read(JsonReader in) throws IOException {
      JsonObject named = JsonParser.parseReader(in).getAsJsonObject();
      JsonElement word = named.get(KIND);
      Class<? extends Fact> kind =
          Fact.kinds().stream()
              .filter(of -> word != null && Fact.word(of).equals(word.getAsString()))
              .findFirst()
              .orElseThrow(() -> new JsonParseException("fact " + word + " is not known"));
      return usual(kind).fromJsonTree(named);
    }

    @SuppressWarnings("unchecked")
    private TypeAdapter<Fact> usual(Class<? extends Fact> kind) {
      return (TypeAdapter<Fact>) gson.getDelegateAdapter(factory, TypeToken.get(kind));
    }
  }
}
