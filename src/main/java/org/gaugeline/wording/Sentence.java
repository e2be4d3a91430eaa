package org.gaugeline.wording;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.gaugeline.quantity.TextBytes;

/**
 * A template, parsed once. {@code {name}} stands for a value; a part in square brackets is left out
 * where one of its values is missing. What is always the same is UTF-8 already.
 */
final class Sentence {
  private final Part[] parts;

  private Sentence(List<Part> parts) {
    this.parts = parts.toArray(new Part[0]);
  }

  private sealed interface Part permits Literal, Slot, Optional {}

  @SuppressWarnings("ArrayRecordComponent")
  private record Literal(byte[] utf8) implements Part {}

  private record Slot(Placeholder placeholder) implements Part {}

  private record Optional(List<Part> parts) implements Part {}

  /**
   * Parses a template.
   *
   * @throws IllegalArgumentException for an unknown placeholder or a bracket without its partner
   */
  static Sentence parse(String template) {
    List<Part> parts = new ArrayList<>();
    int at = 0;
    while (at < template.length()) {
      int open = template.indexOf('[', at);
      int end = open < 0 ? template.length() : open;
      slots(template.substring(at, end), parts);
      if (open < 0) {
        break;
      }
      int close = template.indexOf(']', open);
      if (close < 0) {
        throw new IllegalArgumentException("no ] after [ in: " + template);
      }
      List<Part> inner = new ArrayList<>();
      slots(template.substring(open + 1, close), inner);
      parts.add(new Optional(List.copyOf(inner)));
      at = close + 1;
    }
    return new Sentence(parts);
  }

  private static void slots(String text, List<Part> parts) {
    int at = 0;
    while (at < text.length()) {
      int open = text.indexOf('{', at);
      int end = open < 0 ? text.length() : open;
      if (end > at) {
        parts.add(new Literal(text.substring(at, end).getBytes(StandardCharsets.UTF_8)));
      }
      if (open < 0) {
        return;
      }
      int close = text.indexOf('}', open);
      if (close < 0) {
        throw new IllegalArgumentException("no } after { in: " + text);
      }
      parts.add(new Slot(Placeholder.of(text.substring(open + 1, close))));
      at = close + 1;
    }
  }

  /** The sentence where it has no placeholders; empty where it has some. */
  String plain() {
    return parts.length == 1 && parts[0] instanceof Literal literal
        ? new String(literal.utf8(), StandardCharsets.UTF_8)
        : "";
  }

  /** Appends the sentence with its values. */
  void write(TextBytes out, Filling filling) {
    for (Part part : parts) {
      write(part, filling, out);
    }
  }

  private static void write(Part part, Filling filling, TextBytes out) {
    if (part instanceof Literal literal) {
      out.append(literal.utf8());
    } else if (part instanceof Slot slot) {
      filling.write(out, slot.placeholder());
    } else if (part instanceof Optional optional && allThere(optional.parts(), filling)) {
      for (Part inner : optional.parts()) {
        write(inner, filling, out);
      }
    }
  }

  private static boolean allThere(List<Part> parts, Filling filling) {
    for (Part part : parts) {
      if (part instanceof Slot slot && !filling.has(slot.placeholder())) {
        return false;
      }
    }
    return true;
  }
}
