package org.gaugeline.assembly;

import java.util.List;
import java.util.Map;

/**
 * All holders that the service knows without a request: the generic series and the shop's files.
 *
 * @param byRef every body by its catalogue id, in table order
 * @param byInterface the same bodies by the id of their spindle end
 * @param attachments what composes with them
 * @param countByRef how many of a body the shop's files say it has; absent where they do not say
 */
public record HolderCatalogue(
    Map<String, HolderBody> byRef,
    Map<String, List<HolderBody>> byInterface,
    Attachments attachments,
    Map<String, Integer> countByRef) {

  /** A catalogue in which no counts are known. */
  public HolderCatalogue(Map<String, HolderBody> byRef, Map<String, List<HolderBody>> byInterface) {
    this(byRef, byInterface, Attachments.NONE, Map.of());
  }
}
