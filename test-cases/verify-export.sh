#!/bin/sh
# Verifies an exported ledger with common tools: verify-export.sh FILE
# Exit code 0 when all of it holds, 1 when something does not.
set -eu

export LC_ALL=C.UTF-8
file=$1
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

fail() {
  printf 'does not hold: %s\n' "$*"
  exit 1
}

sum() {
  set -- "$(sha256sum)"
  printf 'sha256:%s' "${1%% *}"
}

# Every public key that entries register, in base64, on a line.
keys() {
  jq -r 'select(.entry) | .entry | fromjson | .content | (.keys // [])[].key, (.key | objects | .key)' \
    "$file" | sort -u
}

# Each key as a file by its name, and all names as one JSON object: what each key is called.
keys | while IFS= read -r key; do
  name=$(printf '%s' "$key" | base64 -d | sum)
  printf '%s' "$key" | base64 -d > "$work/${name#sha256:}.der"
  printf '{"%s": "%s"}\n' "$key" "$name"
done | jq -s 'add // {}' > "$work/names"

# What each signed entry must have signed, and whether its key counted at that point: keys of the
# founding do, and later ones once two roles have vouched for them, until they are withdrawn.
# Prints the first entry that does not hold, or nothing.
statements() {
  jq -rn --slurpfile names "$work/names" '
    def of(protocol):
      protocol | {identifier, version, digest, lists, workbook}
        + (if .effectiveFrom then {effectiveFrom} else {} end)
        + (if .reviewDue then {reviewDue} else {} end);
    def act:
      {"key": "vouch for a key", "key withdrawal": "withdraw a key",
       "approval": "approve a protocol", "withdrawal": "withdraw a protocol",
       "checkpoint": "state of the ledger"};
    def said($entry):
      $entry.content as $c
      | if $entry.kind == "key" then {key: $c.key.key, holder: $c.key.role}
        elif $entry.kind == "key withdrawal" then {key: $c.key, reason: $c.reason}
        elif $entry.kind == "approval" then of($c.protocol)
        elif $entry.kind == "withdrawal"
        then of($c.protocol)
          + {release: ($c.release | tostring), day: $c.day, reason: $c.reason}
        else {sequence: ($c.sequence | tostring)} end;
    $names[0] as $name
    | [inputs | select(.entry) | .entry | fromjson]
    | reduce .[] as $e ({ledger: "", keys: {}, given: {}, bad: []};
        if $e.kind == "founding" and .ledger == "" then
          .ledger = $e.content.ledger
          | .keys = ([$e.content.keys[] | {($name[.key]): .role}] | add)
        elif $e.content.signature then
          $e.content.signature as $s
          | if .keys[$s.key] != $s.role then
              .bad += ["entry \($e.sequence): its key does not count there"]
            elif ($s.statement | fromjson)
              != ({act: act[$e.kind], ledger: .ledger, after: $e.previous, role: $s.role}
                + said($e)) then
              .bad += ["entry \($e.sequence): what was signed is not what it says"]
            elif $e.kind == "key" then
              $name[$e.content.key.key] as $new
              | .given[$new] += [$s]
              | .keys as $known
              | if ([.given[$new][] | select($known[.key]) | .role] | unique | length) > 1
                then .keys[$new] = $e.content.key.role else . end
            elif $e.kind == "key withdrawal" then del(.keys[$e.content.key])
            else . end
        else . end)
    | .bad[0] // empty' "$file"
}

before=sha256:0000000000000000000000000000000000000000000000000000000000000000
number=0
signed=0
documents=0
while IFS= read -r line; do
  digest=$(printf '%s' "$line" | jq -r .digest)
  if [ "$(printf '%s' "$line" | jq 'has("document")')" = true ]; then
    documents=$((documents + 1))
    found=$(printf '%s' "$line" | jq -r .document | base64 -d | sum)
    [ "$found" = "$digest" ] || fail "document $digest"
    continue
  fi
  number=$((number + 1))
  printf '%s' "$line" | jq -rj .entry > "$work/entry"
  [ "$(sum < "$work/entry")" = "$digest" ] || fail "entry $number: its digest"
  [ "$(jq -r .sequence "$work/entry")" = "$number" ] || fail "entry $number: its number"
  [ "$(jq -r .previous "$work/entry")" = "$before" ] || fail "entry $number: what it follows"
  if [ "$(jq '.content | has("signature")' "$work/entry")" = true ]; then
    signed=$((signed + 1))
    jq -rj .content.signature.statement "$work/entry" > "$work/statement"
    jq -r .content.signature.value "$work/entry" | base64 -d > "$work/signature"
    name=$(jq -r .content.signature.key "$work/entry")
    openssl pkeyutl -verify -pubin -inkey "$work/${name#sha256:}.der" -keyform DER -rawin \
      -in "$work/statement" -sigfile "$work/signature" > /dev/null 2>&1 ||
      fail "entry $number: its signature"
  fi
  before=$digest
done < "$file"

[ "$number" -gt 0 ] || fail "there is no entry"
wrong=$(statements)
[ -z "$wrong" ] || fail "$wrong"
printf '%s entries, %s signatures, %s documents hold; last digest %s\n' \
  "$number" "$signed" "$documents" "$before"
