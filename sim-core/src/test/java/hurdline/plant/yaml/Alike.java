package hurdline.plant.yaml;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/** Whether two objects hold the same, field by field, to the bit; for what has no equals. */
final class Alike {
  private Alike() {}

  /** The fields on the way to the first difference; empty where there is none. */
  static String difference(Object a, Object b, String at) {
    if (a == b) {
      return "";
    }
    if (a == null || b == null || (a.getClass() != b.getClass() && !(a instanceof Collection))) {
      return at + ": " + a + " and " + b;
    }
    if (a.getClass().isArray()) {
      return inArrays(a, b, at);
    }
    if (a instanceof List<?> list) {
      return inArrays(list.toArray(), ((List<?>) b).toArray(), at);
    }
    if (a instanceof Map<?, ?> map) {
      Map<?, ?> other = (Map<?, ?>) b;
      return map.keySet().equals(other.keySet()) ? inValues(map, other, at) : at + ": other keys";
    }
    boolean ours = a.getClass().getName().startsWith("hurdline.");
    return ours && !a.getClass().isEnum()
        ? inFields(a, b, at)
        : a.equals(b) ? "" : at + ": " + a + " and " + b;
  }

  private static String inArrays(Object a, Object b, String at) {
    int length = Array.getLength(a);
    if (length != Array.getLength(b)) {
      return at + ": " + length + " and " + Array.getLength(b) + " of them";
    }
    for (int i = 0; i < length; i++) {
      String found = difference(Array.get(a, i), Array.get(b, i), at + "[" + i + "]");
      if (!found.isEmpty()) {
        return found;
      }
    }
    return "";
  }

  private static String inValues(Map<?, ?> a, Map<?, ?> b, String at) {
    Iterator<?> keys = a.keySet().iterator();
    while (keys.hasNext()) {
      Object key = keys.next();
      String found = difference(a.get(key), b.get(key), at + "." + key);
      if (!found.isEmpty()) {
        return found;
      }
    }
    return "";
  }

  private static String inFields(Object a, Object b, String at) {
    try {
      for (Field field : a.getClass().getDeclaredFields()) {
        field.setAccessible(true);
        if (!Modifier.isStatic(field.getModifiers())) {
          String found = difference(field.get(a), field.get(b), at + "." + field.getName());
          if (!found.isEmpty()) {
            return found;
          }
        }
      }
      return "";
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(e);
    }
  }
}
