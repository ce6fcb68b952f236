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

# Public keys by their name, in the order in which entries register them.
keys() {
  jq -r 'select(.entry) | .entry | fromjson | .content | (.keys // [])[].key, (.key | objects | .key)' \
    "$file" | sort -u
}

keys | while IFS= read -r key; do
  name=$(printf '%s' "$key" | base64 -d | sum)
  printf '%s' "$key" | base64 -d > "$work/${name#sha256:}.der"
done

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
printf '%s entries, %s signatures, %s documents hold; last digest %s\n' \
  "$number" "$signed" "$documents" "$before"
