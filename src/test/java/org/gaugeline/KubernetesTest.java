package org.gaugeline;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The manifests hold what a cluster under the restricted Pod Security Standard asks (Kubernetes
 * documentation, "Pod Security Standards"), and their parts refer to each other.
 */
class KubernetesTest {
  private static final Path FOLDER = Path.of("k8s");

  private final JsonNode deployment = read("deployment.yaml");
  private final JsonNode pod = deployment.at("/spec/template/spec");
  private final JsonNode container = pod.at("/containers/0");

  private static JsonNode read(String file) {
    YAMLMapper mapper =
        YAMLMapper.builder().enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION).build();
    try {
      return mapper.readTree(FOLDER.resolve(file).toFile());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void theKustomizationNamesEveryFile() throws IOException {
    List<String> named =
        read("kustomization.yaml").path("resources").valueStream().map(JsonNode::asText).toList();
    try (Stream<Path> files = Files.list(FOLDER)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(
              Stream.concat(named.stream(), Stream.of("kustomization.yaml")).toList());
    }
  }

  @Test
  void everyFileIsWhatItSays() {
    assertThat(kind("deployment.yaml")).isEqualTo("apps/v1 Deployment gaugeline");
    assertThat(kind("service.yaml")).isEqualTo("v1 Service gaugeline");
    assertThat(kind("network-policy.yaml"))
        .isEqualTo("networking.k8s.io/v1 NetworkPolicy gaugeline");
    assertThat(read("kustomization.yaml").at("/labels/0/includeSelectors").asBoolean()).isTrue();
  }

  private static String kind(String file) {
    JsonNode node = read(file);
    return node.path("apiVersion").asText()
        + " "
        + node.path("kind").asText()
        + " "
        + node.at("/metadata/name").asText();
  }

  @Test
  void runsWithoutRights() {
    assertThat(pod.path("automountServiceAccountToken").asBoolean(true)).isFalse();
    assertThat(pod.at("/securityContext/runAsNonRoot").asBoolean()).isTrue();
    assertThat(pod.at("/securityContext/runAsUser").asInt()).isPositive();
    assertThat(pod.at("/securityContext/seccompProfile/type").asText()).isEqualTo("RuntimeDefault");
    JsonNode rights = container.path("securityContext");
    assertThat(rights.path("allowPrivilegeEscalation").asBoolean(true)).isFalse();
    assertThat(rights.path("readOnlyRootFilesystem").asBoolean()).isTrue();
    assertThat(rights.at("/capabilities/drop/0").asText()).isEqualTo("ALL");
    assertThat(rights.at("/capabilities/add").isMissingNode()).isTrue();
  }

  @Test
  void mayWriteOnlyToItsTemporaryFolder() {
    JsonNode mount = container.at("/volumeMounts/0");
    assertThat(mount.path("mountPath").asText()).isEqualTo("/tmp");
    assertThat(container.path("volumeMounts")).hasSize(1);
    JsonNode volume = pod.at("/volumes/0");
    assertThat(volume.path("name")).isEqualTo(mount.path("name"));
    assertThat(volume.has("emptyDir")).isTrue();
  }

  @Test
  void asksForTheMemoryThatItMayUse() {
    JsonNode resources = container.path("resources");
    assertThat(resources.at("/limits/memory").asText()).isEqualTo("384Mi");
    assertThat(resources.at("/requests/memory")).isEqualTo(resources.at("/limits/memory"));
    assertThat(resources.at("/requests/cpu").isMissingNode()).isFalse();
    assertThat(container.at("/env/0/value").asText())
        .contains("-XX:MaxRAMPercentage=", "-XX:ActiveProcessorCount=");
  }

  @Test
  void isProbedWhereTheFrameworkAnswers() {
    for (String probe : List.of("started", "live", "ready")) {
      String name =
          switch (probe) {
            case "started" -> "startupProbe";
            case "live" -> "livenessProbe";
            default -> "readinessProbe";
          };
      JsonNode get = container.path(name).path("httpGet");
      assertThat(get.path("path").asText()).isEqualTo("/q/health/" + probe);
      assertThat(get.path("port").asText()).isEqualTo(container.at("/ports/0/name").asText());
    }
  }

  @Test
  void theServiceAndThePolicyReachThePort() {
    String port = container.at("/ports/0/name").asText();
    assertThat(read("service.yaml").at("/spec/ports/0/targetPort").asText()).isEqualTo(port);
    JsonNode policy = read("network-policy.yaml").path("spec");
    assertThat(policy.at("/ingress/0/ports/0/port").asText()).isEqualTo(port);
    assertThat(policy.path("egress").isMissingNode()).isTrue();
    assertThat(policy.at("/podSelector/matchLabels").isEmpty()).isFalse();
  }
}
