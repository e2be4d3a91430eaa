package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import org.gaugeline.assembly.StockRefs;
import org.gaugeline.toollist.FailOn;
import org.gaugeline.toollist.ListCheck;

/**
 * What all lines of a list share.
 *
 * @param members members of an intent that each line has where it does not say otherwise; never
 *     changed
 * @param described holders of the shop's that the list describes, which a line may name; never
 *     changed
 * @param stock what the shop owns
 * @param artifactUri the caller's file that findings point into; empty where not said
 */
record ListHead(
    ObjectNode members,
    ArrayNode described,
    ListCheck.Stock stock,
    FailOn failOn,
    String artifactUri) {
  static final WordIndex<FailOn> FAIL_ON = WordIndex.of(FailOn.values());

  private static final String STOCK = "stock";
  private static final String SHOP = "shop";

  /** Nothing is shared. */
  static ListHead none(FailOn failOn, String artifactUri) {
    return new ListHead(
        StrictJson.MAPPER.createObjectNode(),
        StrictJson.MAPPER.createArrayNode(),
        ListCheck.Stock.UNLISTED,
        failOn,
        artifactUri);
  }

  /**
   * The members of a list object that is free of faults.
   *
   * @param list loses what is no member of an intent
   */
  static ListHead of(ObjectNode list, FailOn failOn, String artifactUri) {
    JsonNode failOnSaid = list.remove("failOn");
    JsonNode uriSaid = list.remove("artifactUri");
    ArrayNode described = StrictJson.MAPPER.createArrayNode();
    ListCheck.Stock stock = stock(list.path(SHOP), described);
    return new ListHead(
        list,
        described,
        stock,
        failOnSaid == null ? failOn : FAIL_ON.get(failOnSaid.asText()),
        uriSaid == null ? artifactUri : uriSaid.asText());
  }

  /** Takes the stock out: it may be long, and few lines need what it describes. */
  private static ListCheck.Stock stock(JsonNode shop, ArrayNode described) {
    if (!(shop instanceof ObjectNode members) || !members.has(STOCK)) {
      return ListCheck.Stock.UNLISTED;
    }
    Map<String, Integer> counts = new HashMap<>();
    for (JsonNode entry : members.remove(STOCK)) {
      if (entry.has("ref")) {
        counts.merge(entry.get("ref").asText(), entry.path("count").asInt(1), Integer::sum);
      } else {
        described.add(entry);
      }
    }
    return new ListCheck.Stock(Map.copyOf(counts), members.path("stockOnly").asBoolean());
  }

  /** A line with what the list says where the line says nothing, member by member. */
  ObjectNode complete(ObjectNode line) {
    ObjectNode whole = over(members, line);
    boolean names = !described.isEmpty() && namesOwn(whole.at("/assembly/components"));
    if (names && whole.get(SHOP) instanceof ObjectNode shop && !shop.has(STOCK)) {
      shop.set(STOCK, described);
    }
    return whole;
  }

  private static boolean namesOwn(JsonNode components) {
    for (JsonNode component : components) {
      if (StockRefs.isOwn(component.path("ref").asText())) {
        return true;
      }
    }
    return false;
  }

  private static ObjectNode over(ObjectNode below, ObjectNode above) {
    Iterator<Map.Entry<String, JsonNode>> shared = below.properties().iterator();
    while (shared.hasNext()) {
      Map.Entry<String, JsonNode> member = shared.next();
      JsonNode own = above.get(member.getKey());
      if (own == null) {
        // Nodes below are sound and so are only read; an object above may lose members, though.
        above.set(
            member.getKey(),
            member.getValue().isObject() ? member.getValue().deepCopy() : member.getValue());
      } else if (own instanceof ObjectNode ownMembers
          && member.getValue() instanceof ObjectNode sharedMembers) {
        over(sharedMembers, ownMembers);
      }
    }
    return above;
  }
}
