package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.toollist.FailOn;
import org.jspecify.annotations.Nullable;

/** Reads what all lines of a list share, and refuses the list where that is at fault. */
final class ListHeads {
  static final String LIST = "list";
  static final String LINES = "lines";
  private static final ObjectReader INTENTS = StrictJson.MAPPER.readerFor(WireIntent.class);
  private static final Set<String> NO_INTENT = Set.of("failOn", "artifactUri");
  private static final String POCKETS = "pockets";
  private static final List<String> WORDS = Arrays.stream(FailOn.values()).map(FailOn::id).toList();
  private static final int LONGEST_URI = 1000;

  private final Schema defaults;
  private final CatalogueFaults catalogue;

  ListHeads(ReferenceData data, HolderCatalogue holders) {
    this.defaults = ContractDocument.load().schema("ListDefaults");
    this.catalogue = new CatalogueFaults(data, holders);
  }

  /** Query parameters, which say the same where the format has no list object. */
  record Parameters(@Nullable String failOn, @Nullable String artifactUri) {
    FailOn failOnOrError() {
      return failOn == null ? FailOn.ERROR : ListHead.FAIL_ON.get(failOn);
    }

    String uriOrNone() {
      return artifactUri == null ? "" : artifactUri;
    }

    /**
     * Refuses what cannot be used.
     *
     * @param at what stands before the names in pointers
     */
    void check(String at) {
      if (failOn != null && !WORDS.contains(failOn)) {
        throw new ProblemException(
            Problem.invalidParameter(
                new Fault(
                    at + "failOn",
                    "unknown-word",
                    "failOn must be error or warning; it is " + SchemaFaults.shown(failOn) + ".",
                    Map.of("actual", SchemaFaults.shown(failOn)))));
      }
      if (artifactUri != null && artifactUri.length() > LONGEST_URI) {
        throw new ProblemException(
            Problem.invalidParameter(
                new Fault(
                    at + "artifactUri",
                    "too-long",
                    "artifactUri must not be longer than " + LONGEST_URI + " characters.",
                    Map.of("maximum", LONGEST_URI))));
      }
    }
  }

  /**
   * Reads a list object.
   *
   * @param list null where there is none
   * @throws ProblemException with all its faults
   */
  ListHead read(@Nullable JsonNode list, Parameters parameters) {
    if (list == null) {
      return ListHead.none(parameters.failOnOrError(), parameters.uriOrNone());
    }
    List<Fault> faults = new ArrayList<>(FaultFinder.find(list, defaults));
    if (list instanceof ObjectNode members) {
      faults.addAll(catalogue.find(intent(members)));
    }
    if (!faults.isEmpty()) {
      throw new ProblemException(
          Problem.invalid(faults.stream().map(fault -> fault.below("/" + LIST)).toList()));
    }
    return ListHead.of((ObjectNode) list, parameters.failOnOrError(), parameters.uriOrNone());
  }

  private static WireIntent intent(ObjectNode list) {
    ObjectNode intent = list.deepCopy();
    intent.remove(NO_INTENT);
    if (intent.get("machine") instanceof ObjectNode machine) {
      machine.remove(POCKETS);
    }
    try {
      return INTENTS.readValue(intent);
    } catch (IOException e) {
      throw new IllegalStateException("what passed the schema does not bind", e);
    }
  }
}
