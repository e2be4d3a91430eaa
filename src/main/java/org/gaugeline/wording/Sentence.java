package org.gaugeline.wording;

import java.util.ArrayList;
import java.util.List;

/**
 * A template, parsed once. {@code {name}} stands for a value; a part in square brackets is left out
 * where one of its values is missing. A sentence without either is always the same string.
 */
final class Sentence {
  private static final int USUAL_LENGTH = 160;

  private final Part[] parts;
  private final String constant;

  private Sentence(List<Part> parts) {
    this.parts = parts.toArray(new Part[0]);
    this.constant =
        parts.size() == 1 && parts.get(0) instanceof Literal literal ? literal.text() : "";
  }

  private sealed interface Part permits Literal, Slot, Optional {}

  private record Literal(String text) implements Part {}

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
        parts.add(new Literal(text.substring(at, end)));
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

  /** The sentence with its values. */
  String with(Filling filling) {
    if (!constant.isEmpty()) {
      return constant;
    }
    StringBuilder out = new StringBuilder(USUAL_LENGTH);
    for (Part part : parts) {
      write(part, filling, out);
    }
    return out.toString();
  }

  private static void write(Part part, Filling filling, StringBuilder out) {
    if (part instanceof Literal literal) {
      out.append(literal.text());
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
