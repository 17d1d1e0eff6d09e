package faintwind.job.lesson;

import faintwind.guide.lesson.SchoolClass.Teacher;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.security.spec.KeySpec;
import java.util.HexFormat;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

/**
 * The teacher's short code. Only its salted hash is kept: PBKDF2 with HMAC-SHA-256 (RFC 8018, 5.2).
 * A short code keeps honest people honest; who copies the file can try them all.
 */
final class TeacherCode {
  static final int LEAST_LETTERS = 4;

  private static final int ROUNDS = 200_000;
  private static final int SALT_BYTES = 16;
  private static final int HASH_BITS = 256;

  private TeacherCode() {}

  static Teacher of(String name, String code) {
    byte[] salt = new byte[SALT_BYTES];
    new SecureRandom().nextBytes(salt);
    return new Teacher(
        name,
        HexFormat.of().formatHex(salt),
        ROUNDS,
        HexFormat.of().formatHex(hash(code, salt, ROUNDS)));
  }

  static boolean fits(Teacher teacher, String code) {
    byte[] salt = HexFormat.of().parseHex(teacher.salt());
    byte[] kept = HexFormat.of().parseHex(teacher.hash());
    return !code.isEmpty() && MessageDigest.isEqual(kept, hash(code, salt, teacher.rounds()));
  }

  private static byte[] hash(String code, byte[] salt, int rounds) {
    KeySpec key = new PBEKeySpec(code.toCharArray(), salt, rounds, HASH_BITS);
    try {
      return SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256").generateSecret(key).getEncoded();
    } catch (GeneralSecurityException missing) {
      throw new IllegalStateException(missing); // every Java platform has it
    }
  }
}
