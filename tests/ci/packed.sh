#!/usr/bin/env bash
# Packs the library, installs the tarball into a scratch ESM project and a scratch CJS project, and uses it in each.
set -euo pipefail
root="$(cd "$(dirname "$0")/../.." && pwd)"
scratch="$(mktemp -d)"
trap 'rm -rf "$scratch"' EXIT
cd "$root"
npm pack --silent --pack-destination "$scratch" > /dev/null
tarball="$(ls "$scratch"/*.tgz)"

for kind in module commonjs; do
  mkdir "$scratch/$kind"
  cd "$scratch/$kind"
  printf '{ "name": "scratch", "version": "1.0.0", "private": true, "type": "%s" }\n' "$kind" > package.json
  npm install --silent --no-audit --no-fund "$tarball" > /dev/null
  cp "$root/tests/ci/use-$kind.js" use.js
  node use.js
done
