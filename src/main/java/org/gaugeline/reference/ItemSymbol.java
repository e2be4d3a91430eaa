package org.gaugeline.reference;

/**
 * A property symbol of ISO 13399 and what it stands for in a request.
 *
 * @param item what the property belongs to
 * @param path JSON pointer of the member
 * @param meaning in our own words
 */
public record ItemSymbol(String symbol, Item item, String path, String meaning, String sourceKey) {

  /** What a property belongs to. */
  public enum Item implements Word {
    TOOL("tool"),
    HOLDER("holder"),
    ASSEMBLY("assembly");

    private final String id;

    Item(String id) {
      this.id = id;
    }

    @Override
    public String id() {
      return id;
    }
  }
}
