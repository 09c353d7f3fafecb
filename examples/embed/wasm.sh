#!/usr/bin/env bash
# Builds the module for a browser: wasm.sh MODULE.wasm [FEATURES]. Without FEATURES all questions but `schema` and `tables`, which
# are files as well; with "" only `verdict`, `catalogue` and sweeps.
set -euo pipefail
out=$(realpath "$1")
cd "$(dirname "$0")"
# As a `cdylib` alone: nothing is optimized across crates where an `rlib` is made as well.
cargo rustc --locked --quiet --lib --crate-type cdylib --profile wasm --target wasm32-unknown-unknown \
    --no-default-features --features "${2-reports,pictures,design,connections}"
cp "${CARGO_TARGET_DIR:-target}/wasm32-unknown-unknown/wasm/shankline_embed.wasm" "$out"
