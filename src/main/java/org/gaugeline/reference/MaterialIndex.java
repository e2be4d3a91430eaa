package org.gaugeline.reference;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Finds materials by id or alias as people type them: case, blanks, punctuation and a standard's
 * name in front (EN, DIN, AISI, UNS …) do not matter.
 */
public final class MaterialIndex {
  private static final Pattern STANDARD =
      Pattern.compile("(?:(?:aisi|sae|uns|astm|din|en|jis)(?:[^\\p{L}\\p{N}]+|(?=\\p{N})))+");

  private final Map<String, Material> bySpelling;

  private MaterialIndex(Map<String, Material> bySpelling) {
    this.bySpelling = bySpelling;
  }

  /**
   * Index over these materials.
   *
   * @throws IllegalArgumentException if two materials share a spelling
   */
  public static MaterialIndex of(Collection<Material> materials) {
    Map<String, Material> bySpelling = new LinkedHashMap<>();
    for (Material material : materials) {
      add(bySpelling, material.id(), material);
      for (String alias : material.aliases()) {
        add(bySpelling, alias, material);
      }
    }
    return new MaterialIndex(bySpelling);
  }

  /** The material of that name, or null. */
  public @Nullable Material find(String name) {
    return bySpelling.get(spelling(name));
  }

  /**
   * Ids of the materials whose id or alias is near in spelling, best first; among equals in the
   * order of the table. None where none is near.
   *
   * @param name what was typed
   * @param count how many at most
   */
  public List<String> nearest(String name, int count) {
    String typed = spelling(name);
    Map<String, Integer> distances = new LinkedHashMap<>();
    bySpelling.forEach(
        (spelling, material) -> {
          int distance = Nearness.of(typed, spelling);
          if (distance < Nearness.FAR) {
            distances.merge(material.id(), distance, Math::min);
          }
        });
    return distances.entrySet().stream()
        .sorted(Map.Entry.comparingByValue())
        .limit(count)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Lower case, letters and digits only, without a standard's name in front. */
  static String spelling(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    Matcher standard = STANDARD.matcher(lower);
    int from = standard.lookingAt() && standard.end() < lower.length() ? standard.end() : 0;
    return Nearness.fold(lower.substring(from));
  }

  private static void add(Map<String, Material> bySpelling, String name, Material material) {
    Material other = bySpelling.putIfAbsent(spelling(name), material);
    if (other != null && !other.id().equals(material.id())) {
      throw new IllegalArgumentException(
          "'" + name + "' names both " + other.id() + " and " + material.id());
    }
  }
}
