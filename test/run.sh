#!/usr/bin/env bash
# Everything that must hold: what Debian lacks is installed where that is allowed, then types, lint, format, build, tests.
set -euo pipefail
cd "$(dirname "$0")/.."

missing=()
command -v chromium >/dev/null || missing+=(chromium)
command -v soffice >/dev/null || missing+=(libreoffice-calc)
if [ ${#missing[@]} -gt 0 ]; then
  if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
    echo "Installing ${missing[*]} from Debian's packages"
    apt-get update -qq
    DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
  else
    echo "The tests need ${missing[*]}: sudo apt-get install --no-install-recommends ${missing[*]}" >&2
    exit 1
  fi
fi

npm run --silent types
npm run --silent lint
npm run --silent format:check
npm run --silent build
exec npx vitest run --config .config/vitest.config.ts
