package org.gaugeline.advice;

/** Version of the computing: changes whenever a result for the same request changes. */
public final class EngineVersion {
  public static final String CURRENT = "1.0.0";

  private EngineVersion() {}
}
