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
    return new Fault(
        fault.pointer(),
        fault.code(),
        "Too little is said of this holder to estimate the rest ("
            + known
            + "). Give projectionMm and profile.",
        parameters);
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
