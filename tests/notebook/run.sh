#!/usr/bin/env bash
# Runs the notebook from beginning to end and compares what it shows with what is committed:
#
#   bash tests/notebook/run.sh            fails where an output differs or a cell throws
#   bash tests/notebook/run.sh --write    runs it and puts the outputs into the committed notebook
#   bash tests/notebook/run.sh --html D   runs it and writes it as a page into the folder D, to be looked at
#
# It runs against the built package. The kernel is the Deno of node_modules; its settings and caches lie in a scratch
# folder, and it can fetch nothing.
set -euo pipefail
cd "$(dirname "$0")/../.."
notebook='examples/notebook/a-day.ipynb'
scratch="$(mktemp -d)"
trap 'rm -rf "$scratch"' EXIT

if ! command -v jupyter-nbconvert > /dev/null; then
  export DEBIAN_FRONTEND=noninteractive
  apt-get update -qq
  apt-get install -y -qq --no-install-recommends jupyter-nbconvert > /dev/null
fi
[ -f dist/index.js ] || npm run --silent build:js

# the binary itself: a script around it would not pass on the signals that stop a kernel
deno="$(ls "$PWD"/node_modules/@deno/*/deno | head -n 1)"
mkdir -p "$scratch/kernels/deno"
cat > "$scratch/kernels/deno/kernel.json" << KERNEL
{
  "argv": ["$deno", "jupyter", "--kernel", "--conn", "{connection_file}"],
  "display_name": "Deno",
  "language": "typescript",
  "env": {
    "DENO_DIR": "$scratch/cache",
    "DENO_NO_UPDATE_CHECK": "1",
    "NO_COLOR": "1",
    "HTTP_PROXY": "http://127.0.0.1:9",
    "HTTPS_PROXY": "http://127.0.0.1:9"
  }
}
KERNEL
export JUPYTER_PATH="$scratch" JUPYTER_CONFIG_DIR="$scratch" JUPYTER_DATA_DIR="$scratch" JUPYTER_RUNTIME_DIR="$scratch"
export PYTHONPATH="$PWD/tests/notebook" PYTHONDONTWRITEBYTECODE=1

jupyter-nbconvert --to notebook --log-level ERROR --output-dir "$scratch" "$notebook" \
  --NotebookExporter.preprocessors=patient.PatientExecutePreprocessor --PatientExecutePreprocessor.timeout=60
fresh="$scratch/$(basename "$notebook")"

case "${1-}" in
  --write) npx tsx tests/notebook/compare.ts --write "$notebook" "$fresh" ;;
  # drawings as they are: cleaned like foreign HTML they would lose their lines
  --html) jupyter-nbconvert --to html --log-level ERROR --HTMLExporter.filters=clean_html=os.fspath --output-dir "$2" "$fresh" ;;
  '') npx tsx tests/notebook/compare.ts "$notebook" "$fresh" ;;
  *) echo "unknown: $1" >&2 && exit 2 ;;
esac
