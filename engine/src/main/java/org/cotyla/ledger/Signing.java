package org.cotyla.ledger;

import java.util.List;
import java.util.Optional;
import org.cotyla.issue.RejectedException;

/** Signs what is about to be written, under the state that the ledger is in. */
final class Signing {

  private Signing() {}

  /** Makes content out of its signature. */
  interface Signed {
    Content with(Signature signature);
  }

  /**
   * Appends content that the signer signs.
   *
   * @throws RejectedException when the key does not count in this ledger for the role
   */
  static Entry append(LedgerWriting writing, Signer signer, Signed content) {
    Governance governance = writing.governance();
    String after = writing.head().digest();
    PublicKeyOf key = key(governance, signer);
    Signature unsigned = new Signature(signer.role(), key.name(), "", "");
    String statement =
        Statement.of(content.with(unsigned), governance.ledger(), after, signer.role());
    String value = SigningKey.sign(signer.privatePem(), statement);
    Signature signature = new Signature(signer.role(), key.name(), statement, value);
    if (!SigningKey.verifies(key, signature)) {
      throw LedgerFault.of(
          "L023",
          "the key is not the one that this ledger knows of the role `" + signer.role() + "`",
          "sign with the private key whose public half was registered");
    }
    return writing.append(content.with(signature));
  }

  private static PublicKeyOf key(Governance governance, Signer signer) {
    Optional<PublicKeyOf> key =
        governance.keys().stream().filter(k -> k.role().equals(signer.role())).findFirst();
    List<String> roles = governance.keys().stream().map(PublicKeyOf::role).toList();
    return key.orElseThrow(
        () ->
            LedgerFault.of(
                "L022",
                "no key of the role `" + signer.role() + "` counts in this ledger",
                "the roles with keys: " + String.join(", ", roles)));
  }
}
