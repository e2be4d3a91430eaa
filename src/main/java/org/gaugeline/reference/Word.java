package org.gaugeline.reference;

/**
 * A closed vocabulary entry with the lower-kebab word that stands for it in requests and tables.
 */
public interface Word {
  String id();
}
