package org.gaugeline.wording;

import java.util.List;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.TextBytes;
import org.gaugeline.quantity.TextUnits;
import org.gaugeline.reference.Word;
import org.jspecify.annotations.Nullable;

/** Fills sentences about a member of the request and its value. */
record MemberFilling(Job job, Member member, Object value, @Nullable Object from)
    implements Filling {

  @Override
  public boolean has(Placeholder placeholder) {
    return switch (placeholder) {
      case FROM -> from != null;
      case NAME, VALUE, MATERIAL, INTERFACE -> true;
      case DEMAND, CAPACITY, OVERLAP, SUBJECT, CONFIDENCE, TAIL, SPEED -> false;
    };
  }

  @Override
  public void write(TextBytes out, Placeholder placeholder) {
    switch (placeholder) {
      case NAME -> out.append(member.words());
      case VALUE -> value(out, value);
      case FROM -> value(out, from);
      case MATERIAL -> out.append(job.workpiece().name());
      case INTERFACE -> out.append(job.machine().spindle().id());
      case DEMAND, CAPACITY, OVERLAP, SUBJECT, CONFIDENCE, TAIL, SPEED ->
          throw new IllegalStateException("{" + placeholder.id() + "} is not for members");
    }
  }

  private void value(TextBytes out, @Nullable Object said) {
    if (said instanceof Number number) {
      boolean inch = job.textUnits() == TextUnits.INCH;
      (inch ? member.inch() : member.metric()).append(out, number.doubleValue());
      if (member.money()) {
        out.append(' ');
        out.append(job.shop().currency());
      }
    } else if (said instanceof Word word) {
      out.append(word.id());
    } else if (said instanceof Boolean flag) {
      out.append(flag ? "yes" : "no");
    } else if (said instanceof List<?> list) {
      list(out, list);
    } else {
      out.append(String.valueOf(said));
    }
  }

  private static void list(TextBytes out, List<?> list) {
    if (list.isEmpty()) {
      out.append("none");
    }
    for (int i = 0; i < list.size(); i++) {
      out.append(i == 0 ? "" : ", ");
      out.append(String.valueOf(list.get(i)));
    }
  }
}
