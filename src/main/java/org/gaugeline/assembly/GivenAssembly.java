package org.gaugeline.assembly;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.job.StockEntry;
import org.jspecify.annotations.Nullable;

/**
 * An assembly that somebody chose, in SI, as far as it was said.
 *
 * @param components spindle first
 * @param stickOutM front face to the tool's lowest point; null where not said
 * @param measured what was measured on it
 */
public record GivenAssembly(
    List<Component> components, @Nullable Double stickOutM, Measured measured) {

  /**
   * One component: of the catalogue, in the caller's own words, or the former with some of the
   * latter.
   *
   * @param pointer where in the request it stands
   * @param role what it does; null where its reference or family says so
   * @param ref catalogue id; null for an inline component
   * @param details whatever is known of it
   */
  public record Component(
      String pointer, @Nullable Role role, @Nullable String ref, StockEntry.InlineHolder details) {}

  /** The same with another stick-out. */
  public GivenAssembly standingOut(double otherStickOutM) {
    return new GivenAssembly(components, otherStickOutM, measured);
  }

  /** The same with one component replaced. */
  public GivenAssembly with(int index, Component component) {
    List<Component> changed = new ArrayList<>(components);
    changed.set(index, component);
    return new GivenAssembly(List.copyOf(changed), stickOutM, measured);
  }
}
