#!/usr/bin/env bash
# Packs the library, installs the tarball into a scratch folder, and has every runtime that can be had answer the same
# calls there: the answers must be those of Node. The runtimes are installed there too, none of them into the repository.
set -euo pipefail
cd "$(dirname "$0")/../.."
scratch="$(mktemp -d)"
trap 'rm -rf "$scratch"' EXIT
npm pack --silent --pack-destination "$scratch" > /dev/null
printf '{ "name": "scratch", "version": "1.0.0", "private": true, "type": "module" }\n' > "$scratch/package.json"
(cd "$scratch" && npm install --silent --no-audit --no-fund "$scratch"/*.tgz > /dev/null)
npx tsx tests/ci/everywhere/everywhere.ts "$scratch"
