package org.gaugeline.assembly;

import java.util.Set;

/** What a stock entry may name: holders, parts, and stacks of them joined by {@code +}. */
public final class StockRefs {
  private final HolderCatalogue catalogue;
  private final Set<String> attachments;
  private final Composer composer;

  public StockRefs(HolderCatalogue catalogue) {
    this.catalogue = catalogue;
    this.attachments = catalogue.attachments().refs();
    this.composer = new Composer(catalogue);
  }

  /** Whether a reference may name a body that a request described. */
  public static boolean isOwn(String ref) {
    return ref.startsWith(InlineBodies.OWN);
  }

  /** Whether the catalogue has it, or can put it together. */
  public boolean knows(String ref) {
    return catalogue.byRef().containsKey(ref)
        || attachments.contains(ref)
        || (ref.indexOf('+') >= 0 && composer.named(ref) != null);
  }
}
