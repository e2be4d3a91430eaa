package org.gaugeline.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The template file, read once: lines of {@code kind.code = sentence}, or {@code
 * reason.code.variant = sentence}. It must have a sentence for every code of {@link Codes}, and
 * none besides.
 */
final class Templates {
  private static final String FILE = "/wording/en.txt";
  private static final String GENERAL_UNLIMITED = "reason.unlimited";
  private static final String MEMBER = "member.";
  private static final String MEANING = "meaning.";
  private static final String FORMULA = "formula.";
  private static final String REMEDY = "remedy.";

  private final Map<String, Sentence> open;
  private final List<String> faults = new ArrayList<>();

  private Templates(Map<String, Sentence> open) {
    this.open = open;
  }

  /** All sentences by kind and code. */
  record Sentences(
      Map<String, Map<Variant, Sentence>> reasons,
      Map<String, Sentence> cautions,
      Map<String, Sentence> steps,
      Map<String, Sentence> assumptions,
      Map<String, Sentence> limits,
      Map<String, Sentence> findings,
      Map<String, Sentence> lists,
      Map<String, Words.Explained> explained,
      Map<String, Sentence> changes,
      Sentence change,
      Map<String, Member> members) {}

  static Sentences load() {
    try (InputStream in = Templates.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException(FILE + " is missing");
      }
      return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Parses a whole template file.
   *
   * @throws IllegalArgumentException with every fault: codes without a sentence, sentences without
   *     a code, codes worded twice, unknown placeholders
   */
  static Sentences parse(String text) {
    Map<String, Sentence> sentences = new TreeMap<>();
    Map<String, Member> members = new HashMap<>();
    List<String> faults = new ArrayList<>();
    text.lines()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .forEach(line -> line(line, sentences, members, faults));
    Templates templates = new Templates(sentences);
    templates.faults.addAll(faults);
    return templates.sentences(members);
  }

  private static void line(
      String line,
      Map<String, Sentence> sentences,
      Map<String, Member> members,
      List<String> faults) {
    int equals = line.indexOf(" = ");
    if (equals < 0) {
      faults.add("no ' = ' in: " + line);
      return;
    }
    String key = line.substring(0, equals);
    String template = line.substring(equals + 3);
    try {
      boolean twice;
      if (key.startsWith(MEMBER)) {
        String pointer = key.substring(MEMBER.length());
        twice = members.put(pointer, Member.of(pointer, template)) != null;
      } else {
        twice = sentences.put(key, Sentence.parse(template)) != null;
      }
      if (twice) {
        faults.add(key + " is worded twice");
      }
    } catch (IllegalArgumentException e) {
      faults.add(key + ": " + e.getMessage());
    }
  }

  private Sentences sentences(Map<String, Member> members) {
    Sentence unlimited = open.remove(GENERAL_UNLIMITED);
    Map<String, Map<Variant, Sentence>> reasons = new HashMap<>();
    for (String code : Codes.reasons()) {
      reasons.put(code, variants("reason." + code, unlimited));
    }
    Map<String, Sentence> cautions = new HashMap<>(all("caution.", Codes.CAUTIONS));
    cautions.putAll(all("caution.", Codes.CHART_CAUTIONS));
    Map<String, Sentence> steps = all("step.", Codes.STEPS);
    Map<String, Sentence> assumptions = all("assumption.", Codes.ASSUMPTIONS);
    Map<String, Sentence> limits = all("limit.", Codes.limits());
    Map<String, Sentence> findings = all("finding.", Codes.findingsOnly());
    Map<String, Sentence> lists = all("list.", Codes.listFindings());
    Map<String, Words.Explained> explained = explained();
    Map<String, Sentence> changes = all("change.", Codes.CHANGES);
    Sentence change = open.remove("change");
    if (unlimited == null || change == null) {
      faults.add(GENERAL_UNLIMITED + " or change has no sentence");
    }
    for (String key : open.keySet()) {
      faults.add(key + " has a sentence and no code");
    }
    if (!faults.isEmpty() || change == null) {
      throw new IllegalArgumentException(FILE + ": " + String.join("; ", faults));
    }
    return new Sentences(
        reasons,
        cautions,
        steps,
        assumptions,
        limits,
        findings,
        lists,
        explained,
        changes,
        change,
        members);
  }

  private Map<String, Words.Explained> explained() {
    List<String> codes = new ArrayList<>(Codes.findings());
    codes.addAll(Codes.listFindings());
    Map<String, Sentence> meanings = all(MEANING, codes);
    Map<String, Sentence> formulas = all(FORMULA, codes);
    Map<String, Sentence> remedies = all(REMEDY, codes);
    Map<String, Words.Explained> byCode = new HashMap<>();
    for (String code : codes) {
      byCode.put(
          code,
          new Words.Explained(
              plain(MEANING + code, meanings.get(code)),
              plain(FORMULA + code, formulas.get(code)),
              plain(REMEDY + code, remedies.get(code))));
    }
    return byCode;
  }

  /** Words of a code, which has no numbers to fill in. */
  private String plain(String key, @Nullable Sentence sentence) {
    String text = sentence == null ? "" : sentence.plain();
    if (sentence != null && text.isEmpty()) {
      faults.add(key + " must be without placeholders");
    }
    return text;
  }

  private Map<String, Sentence> all(String kind, List<String> codes) {
    Map<String, Sentence> byCode = new HashMap<>();
    for (String code : codes) {
      Sentence sentence = open.remove(kind + code);
      if (sentence == null) {
        faults.add(kind + code + " has no sentence");
      } else {
        byCode.put(code, sentence);
      }
    }
    return byCode;
  }

  /** A sentence for each variant: its own, that of the variant it falls back to, or the plain. */
  private Map<Variant, Sentence> variants(String key, @Nullable Sentence unlimited) {
    Sentence plain = open.remove(key);
    Map<Variant, Sentence> own = new EnumMap<>(Variant.class);
    for (Variant variant : Variant.values()) {
      Sentence sentence = open.remove(key + "." + variant.id());
      if (sentence != null) {
        own.put(variant, sentence);
      }
    }
    Map<Variant, Sentence> sentences = new EnumMap<>(Variant.class);
    for (Variant variant : Variant.values()) {
      Sentence sentence = own.getOrDefault(variant, own.getOrDefault(variant.next(), plain));
      if (sentence == null && variant == Variant.UNLIMITED) {
        sentence = unlimited;
      }
      if (sentence == null) {
        faults.add(key + "." + variant.id() + " has no sentence");
      } else {
        sentences.put(variant, sentence);
      }
    }
    return sentences;
  }
}
