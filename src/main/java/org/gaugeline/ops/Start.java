package org.gaugeline.ops;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;

/** Starts the service: the tables are read while the framework starts. */
@QuarkusMain
public final class Start {
  private Start() {}

  public static void main(String... arguments) {
    Groundwork.begin();
    Quarkus.run(arguments);
  }
}
