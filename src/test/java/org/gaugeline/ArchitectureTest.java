package org.gaugeline;

import org.junit.jupiter.api.Test;

class ArchitectureTest {
  @Test
  void placeholder() {
    org.junit.jupiter.api.Assertions.assertEquals(4, 2 + 2);
  }
}
