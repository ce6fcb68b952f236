package org.cotyla.ledger;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cotyla.issue.RejectedException;

/**
 * An Ed25519 key pair as its holder keeps it: two PEM texts that common tools read as well.
 *
 * @param privatePem the private key (PKCS 8), which nobody else may see
 * @param publicPem the public key (SubjectPublicKeyInfo)
 */
public record SigningKey(String privatePem, String publicPem) {

  private static final String ALGORITHM = "Ed25519";
  private static final Pattern PEM =
      Pattern.compile("-----BEGIN ([A-Z ]+)-----([A-Za-z0-9+/=\\s]+)-----END \\1-----");

  /** Makes a new pair. */
  public static SigningKey make() {
    try {
      var pair = KeyPairGenerator.getInstance(ALGORITHM).generateKeyPair();
      return new SigningKey(
          pem("PRIVATE KEY", pair.getPrivate().getEncoded()),
          pem("PUBLIC KEY", pair.getPublic().getEncoded()));
    } catch (GeneralSecurityException absent) {
      throw new IllegalStateException("this Java lacks Ed25519", absent);
    }
  }

  /**
   * The public key of a PEM text, for a role.
   *
   * @throws RejectedException when it is not one
   */
  public static PublicKeyOf publicKey(String role, String pem) {
    byte[] bytes = bytes(pem, "PUBLIC KEY");
    if (read(bytes) == null) {
      throw noKey("PUBLIC KEY");
    }
    return new PublicKeyOf(role, Base64.getEncoder().encodeToString(bytes));
  }

  /**
   * Signs a statement with the private key of a PEM text.
   *
   * @return the signature in base64
   * @throws RejectedException when it is not a private key
   */
  static String sign(String pem, String statement) {
    try {
      PrivateKey key =
          KeyFactory.getInstance(ALGORITHM)
              .generatePrivate(new PKCS8EncodedKeySpec(bytes(pem, "PRIVATE KEY")));
      var signing = java.security.Signature.getInstance(ALGORITHM);
      signing.initSign(key);
      signing.update(statement.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(signing.sign());
    } catch (GeneralSecurityException unsound) {
      throw noKey("PRIVATE KEY");
    }
  }

  /** Whether the signature is one of the statement by the key. */
  static boolean verifies(PublicKeyOf key, Signature signature) {
    try {
      PublicKey known = read(Base64.getDecoder().decode(key.key()));
      if (known == null) {
        return false;
      }
      var checking = java.security.Signature.getInstance(ALGORITHM);
      checking.initVerify(known);
      checking.update(signature.statement().getBytes(StandardCharsets.UTF_8));
      return checking.verify(Base64.getDecoder().decode(signature.value()));
    } catch (GeneralSecurityException | IllegalArgumentException unsound) {
      return false;
    }
  }

  private static @org.jspecify.annotations.Nullable PublicKey read(byte[] bytes) {
    try {
      return KeyFactory.getInstance(ALGORITHM).generatePublic(new X509EncodedKeySpec(bytes));
    } catch (GeneralSecurityException unsound) {
      return null;
    }
  }

  private static byte[] bytes(String pem, String label) {
    Matcher found = PEM.matcher(pem);
    if (!found.find() || !found.group(1).equals(label)) {
      throw noKey(label);
    }
    try {
      return Base64.getMimeDecoder().decode(found.group(2));
    } catch (IllegalArgumentException unsound) {
      throw noKey(label);
    }
  }

  private static RejectedException noKey(String label) {
    return LedgerFault.of(
        "L020",
        "the file holds no Ed25519 key between BEGIN " + label + " and END " + label,
        "`cotyla make-key` makes a pair: FILE is the private key, FILE.pub the public one");
  }

  private static String pem(String label, byte[] bytes) {
    return "-----BEGIN "
        + label
        + "-----\n"
        + Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(bytes)
        + "\n-----END "
        + label
        + "-----\n";
  }

  /** Keeps the private key out of every message. */
  @Override
  public String toString() {
    return "a key pair";
  }
}
