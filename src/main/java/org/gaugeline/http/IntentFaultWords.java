package org.gaugeline.http;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.gaugeline.job.IntentFault;
import org.gaugeline.quantity.SixDigits;
import org.gaugeline.quantity.UnitSuffix;
import org.jspecify.annotations.Nullable;

/** Words for what only composing candidates shows: a stock entry of which too little is said. */
final class IntentFaultWords {
  private IntentFaultWords() {}

  static List<Fault> faults(List<IntentFault> faults) {
    return faults.stream().map(IntentFaultWords::fault).toList();
  }

  private static Fault fault(IntentFault fault) {
    Map<String, Object> parameters = new LinkedHashMap<>();
    // The engine's maps have no order of their own.
    fault.parameters().keySet().stream()
        .sorted()
        .forEach(key -> put(parameters, key, fault.parameters().get(key)));
    String known =
        parameters.entrySet().stream()
            .map(entry -> entry.getKey() + " " + text(entry.getValue()))
            .collect(Collectors.joining(", "));
    return new Fault(fault.pointer(), fault.code(), detail(fault.code(), known), parameters);
  }

  private static String detail(String code, String known) {
    return switch (code) {
      case "holder-needed" ->
          "No component holds the tool. Name a holder of the catalogue by ref, or describe one by"
              + " family or by role \"holder\".";
      case "second-holder" ->
          "A holder stands before this one already. What a holder grips is an extension or a"
              + " sleeve; what a holder sits on is an adapter and stands before it. Maybe another"
              + " role was meant.";
      case "holder-first" ->
          "Nothing stands before this part that could take it. Components are listed spindle first:"
              + " the holder, then what it grips.";
      case "adapter-first" ->
          "An adapter stands between spindle and holder, and a holder stands before this one."
              + " Components are listed spindle first.";
      case "unknown-holder" ->
          "This reference is neither in the catalogue nor the name of a holder that shop.stock"
              + " describes ("
              + known
              + "). Copy it from the answer to the same stock, or describe the holder here.";
      case "nose-thinner-than-bore" ->
          "The front of profile is not thicker than the bore in it ("
              + known
              + "). Maybe boreMm is missing, or radius and diameter were mixed.";
      case "no-room-for-mass" ->
          "The tuned mass has no room in this body: it is too heavy, or the body too short or too"
              + " thin. Maybe grams and kilograms were mixed, or a part of profile is missing.";
      case "adapter-not-estimable" ->
          "Too little is said of this adapter to estimate the rest ("
              + known
              + "): no generic one has that spindle end. Give the interface of the holder behind it,"
              + " which says what the adapter offers in front.";
      default ->
          "Too little is said of this holder to estimate the rest ("
              + known
              + "). Give projectionMm and profile, or interface and family as the catalogue has"
              + " them together.";
    };
  }

  /** Lengths leave in millimetres. */
  private static void put(Map<String, Object> parameters, String key, @Nullable Object value) {
    if (value instanceof Double lengthM && UnitSuffix.findOf(key) == UnitSuffix.M) {
      parameters.put(key + "m", SixDigits.round(UnitSuffix.MM.fromSi(lengthM)));
    } else if (value != null) {
      parameters.put(key, value);
    }
  }

  private static String text(Object value) {
    return value instanceof Double number ? SchemaFaults.plain(number) : String.valueOf(value);
  }
}
