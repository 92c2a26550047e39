package walebook.command;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Random;
import walebook.words.Words;

/**
 * Where a command reads and writes, and what it needs from outside.
 *
 * @param chance draws codes for new pieces and plans
 */
public record Terminal(
    BufferedReader in, PrintStream out, PrintStream err, Words words, Clock clock, Random chance) {

  /** The process's own streams, always UTF-8 so that names come out right everywhere. */
  public static Terminal ofProcess() {
    return new Terminal(
        new BufferedReader(
            new InputStreamReader(new FileInputStream(FileDescriptor.in), StandardCharsets.UTF_8)),
        new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8),
        new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8),
        Words.english(),
        Clock.system(ZoneId.systemDefault()),
        new SecureRandom());
  }

  String say(String key, Object... args) {
    return words.say(key, args);
  }
}
