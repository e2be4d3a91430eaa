package org.gaugeline.http;

import java.util.HashMap;
import java.util.Map;
import org.gaugeline.reference.Word;
import org.jspecify.annotations.Nullable;

/** Constants of a vocabulary by their words. */
final class WordIndex<W extends Word> {
  private final Map<String, W> byId = new HashMap<>();

  private WordIndex() {}

  static <W extends Word> WordIndex<W> of(W[] words) {
    WordIndex<W> index = new WordIndex<>();
    for (W word : words) {
      index.byId.put(word.id(), word);
    }
    return index;
  }

  /** The constant of a word that the schema admitted; null for null. */
  @Nullable W find(@Nullable String id) {
    return id == null ? null : get(id);
  }

  W get(String id) {
    W word = byId.get(id);
    if (word == null) {
      throw new IllegalStateException("the schema admits '" + id + "', the vocabulary does not");
    }
    return word;
  }
}
