package org.gaugeline.advice;

/** Version of the engine: any change of a number in an answer needs a new one. */
public final class EngineVersion {
  public static final String CURRENT = "1.4.0";

  private EngineVersion() {}
}
