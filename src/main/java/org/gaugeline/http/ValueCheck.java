package org.gaugeline.http;

/** Whether a bound value keeps to its schema. */
interface ValueCheck {
  boolean passes(Object value);
}
