package org.gaugeline.assembly;

import java.util.List;
import java.util.Map;

/**
 * All holders that the service knows without a request: the generic series and the shop's files.
 *
 * @param byRef every body by its catalogue id, in table order
 * @param byInterface the same bodies by the id of their spindle end
 */
public record HolderCatalogue(
    Map<String, HolderBody> byRef, Map<String, List<HolderBody>> byInterface) {}
