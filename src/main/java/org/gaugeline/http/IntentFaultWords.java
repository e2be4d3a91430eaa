package org.gaugeline.http;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.gaugeline.job.IntentFault;
import org.gaugeline.quantity.SixDigits;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.Word;
import org.jspecify.annotations.Nullable;

/** Words for what the engine finds wrong with an intent. */
final class IntentFaultWords {
  private final Collection<String> interfaceIds;

  IntentFaultWords(Collection<String> interfaceIds) {
    this.interfaceIds = List.copyOf(interfaceIds);
  }

  List<Fault> faults(List<IntentFault> faults) {
    return faults.stream().map(this::fault).toList();
  }

  private Fault fault(IntentFault fault) {
    Map<String, Object> parameters = new LinkedHashMap<>();
    // The engine's maps have no order of their own.
    fault.parameters().keySet().stream()
        .sorted()
        .forEach(key -> put(parameters, key, fault.parameters().get(key)));
    if (fault.code().equals("unknown-interface")) {
      parameters.put("nearest", Nearest.of(text(parameters.get("actual")), interfaceIds));
    }
    return new Fault(
        fault.pointer(),
        fault.code(),
        detail(fault.pointer(), fault.code(), parameters),
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

  private static String detail(String pointer, String code, Map<String, Object> parameters) {
    String name = SchemaFaults.name(pointer);
    Object actual = parameters.get("actual");
    String shown = actual == null ? name : name + " (" + text(actual) + ")";
    return switch (code) {
      case "unknown-material" ->
          shown
              + " is not in the catalogue."
              + nearest(parameters)
              + " A material of your own needs kc11NPerMm2, mc and isoGroup.";
      case "operation-not-covered" ->
          shown
              + " is read, but not computed in this version. GET /v1/catalogue/operations lists"
              + " what is.";
      case "holder-not-estimable" ->
          "Too little is said of this holder to estimate the rest"
              + rest(parameters)
              + ". Give projectionMm and profile.";
      case "unknown-interface", "unknown-family", "unknown-holder" ->
          shown + " is not in the catalogue." + nearest(parameters);
      case "pitch-needed" ->
          "pitchMm is required for a thread of "
              + text(parameters.get("diameterMm"))
              + " mm: the catalogue knows no coarse pitch for it. Maybe the tap drill was given as"
              + " diameterMm.";
      case "iso-group-needed" ->
          "isoGroup is required for a material that the catalogue lacks"
              + (actual == null ? "." : " (" + text(actual) + ").");
      case "hardness-outside-material" ->
          shown
              + " lies outside what the material is known for, "
              + text(parameters.get("minimum"))
              + " to "
              + text(parameters.get("maximum"))
              + " HB. Maybe another state was meant, or another hardness scale.";
      default -> shown + ": " + code.replace('-', ' ') + "." + rest(parameters);
    };
  }

  private static String nearest(Map<String, Object> parameters) {
    return parameters.get("nearest") instanceof List<?> names && !names.isEmpty()
        ? " Maybe "
            + names.stream().map(String::valueOf).collect(Collectors.joining(" or "))
            + " was meant."
        : " The catalogue lists what is known.";
  }

  private static String rest(Map<String, Object> parameters) {
    String rest =
        parameters.entrySet().stream()
            .filter(entry -> !entry.getKey().equals("actual"))
            .map(entry -> entry.getKey() + " " + text(entry.getValue()))
            .collect(Collectors.joining(", "));
    return rest.isEmpty() ? "" : " (" + rest + ")";
  }

  private static String text(@Nullable Object value) {
    return value instanceof Word word
        ? word.id()
        : value instanceof Double number ? SchemaFaults.plain(number) : String.valueOf(value);
  }
}
