package org.gaugeline.http;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Tells whether a bound record keeps to its schema, without telling what is wrong: {@link
 * FaultFinder} does that for the few that do not.
 */
final class RecordCheck implements ValueCheck {
  private static final MethodType GETTER = MethodType.methodType(Object.class, Object.class);

  private final Member[] members;

  private RecordCheck(Member[] members) {
    this.members = members;
  }

  /**
   * Prepares the check.
   *
   * @throws IllegalStateException where record and schema do not have the same members
   */
  static RecordCheck of(Class<?> type, Schema schema) {
    RecordComponent[] components = type.getRecordComponents();
    if (components.length != schema.properties().size()) {
      throw new IllegalStateException(type.getSimpleName() + " and its schema differ in members");
    }
    Member[] members = new Member[components.length];
    for (int i = 0; i < components.length; i++) {
      String name = StrictJson.memberName(components[i].getName());
      Schema property = schema.properties().get(name);
      if (property == null) {
        throw new IllegalStateException("the schema of " + type.getSimpleName() + " lacks " + name);
      }
      members[i] =
          new Member(
              getter(components[i]),
              schema.required().contains(name),
              check(components[i].getGenericType(), property));
    }
    return new RecordCheck(members);
  }

  private static MethodHandle getter(RecordComponent component) {
    try {
      return MethodHandles.lookup().unreflect(component.getAccessor()).asType(GETTER);
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(e);
    }
  }

  private static ValueCheck check(Type type, Schema schema) {
    return switch (schema.kind()) {
      case OBJECT -> of((Class<?>) type, schema);
      case ARRAY -> list(type, schema);
      case STRING -> value -> schema.admits((String) value);
      case NUMBER, INTEGER -> value -> schema.range().holds(((Number) value).doubleValue());
      case BOOLEAN -> value -> true;
    };
  }

  private static ValueCheck list(Type type, Schema schema) {
    Schema items = schema.items();
    if (items == null) {
      throw new IllegalStateException("an array without items");
    }
    ValueCheck item = check(((ParameterizedType) type).getActualTypeArguments()[0], items);
    int maxItems = schema.size().maxItems();
    return value -> {
      List<?> list = (List<?>) value;
      if (list.size() > maxItems) {
        return false;
      }
      for (Object entry : list) {
        if (!item.passes(entry)) {
          return false;
        }
      }
      return true;
    };
  }

  @Override
  public boolean passes(Object value) {
    for (Member member : members) {
      Object found = member.read(value);
      if (found == null ? member.required : !member.check.passes(found)) {
        return false;
      }
    }
    return true;
  }

  private record Member(MethodHandle getter, boolean required, ValueCheck check) {
    @Nullable Object read(Object owner) {
      try {
        return getter.invokeExact(owner);
      } catch (Throwable e) {
        throw new IllegalStateException(e);
      }
    }
  }
}
