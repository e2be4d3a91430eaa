package org.gaugeline.http;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.gaugeline.job.IntentFault;
import org.gaugeline.reference.Word;

/** Words for what the engine finds wrong with an intent. */
final class IntentFaultWords {
  private IntentFaultWords() {}

  static Fault fault(IntentFault fault) {
    return new Fault(fault.pointer(), fault.code(), detail(fault), fault.parameters());
  }

  private static String detail(IntentFault fault) {
    String name = SchemaFaults.name(fault.pointer());
    Object actual = fault.parameters().get("actual");
    String shown = actual == null ? name : name + " (" + text(actual) + ")";
    return switch (fault.code()) {
      case "unknown-name" -> shown + " is not in the catalogue." + nearest(fault);
      case "required" -> name + " is required here." + rest(fault);
      default -> shown + ": " + fault.code().replace('-', ' ') + "." + rest(fault);
    };
  }

  private static String nearest(IntentFault fault) {
    return fault.parameters().get("nearest") instanceof List<?> names && !names.isEmpty()
        ? " Maybe "
            + names.stream().map(String::valueOf).collect(Collectors.joining(" or "))
            + " was meant."
        : " The catalogue lists what is known.";
  }

  private static String rest(IntentFault fault) {
    String rest =
        fault.parameters().entrySet().stream()
            .filter(entry -> !entry.getKey().equals("actual"))
            .map(IntentFaultWords::pair)
            .collect(Collectors.joining(", "));
    return rest.isEmpty() ? "" : " (" + rest + ")";
  }

  private static String pair(Map.Entry<String, Object> entry) {
    return entry.getKey() + " " + text(entry.getValue());
  }

  private static String text(Object value) {
    return value instanceof Word word
        ? word.id()
        : value instanceof Double number
            ? SchemaFaults.plain(number)
            : String.valueOf(value);
  }
}
