package org.cotyla.cli;

import java.lang.reflect.Constructor;
import java.util.Arrays;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes the commands, and hands its surroundings to each that takes them. */
record CommandFactory(Terminal terminal) implements IFactory {

  @Override
  public <K> K create(Class<K> type) throws Exception {
    Optional<Constructor<?>> constructor =
        Arrays.stream(type.getDeclaredConstructors())
            .filter(c -> Arrays.equals(c.getParameterTypes(), new Class<?>[] {Terminal.class}))
            .findFirst();
    return constructor.isPresent()
        ? type.cast(constructor.get().newInstance(terminal))
        : CommandLine.defaultFactory().create(type);
  }
}
