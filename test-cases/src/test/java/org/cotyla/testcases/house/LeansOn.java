package org.cotyla.testcases.house;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The source beside a check, and how its value is known. */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@Repeatable(LeansOn.All.class)
public @interface LeansOn {

  /** Keys of the protocol's sheet of sources. */
  String[] value();

  Known known();

  /** Several sources whose values are known in different ways. */
  @Target(ElementType.METHOD)
  @Retention(RetentionPolicy.RUNTIME)
  @interface All {
    LeansOn[] value();
  }
}
