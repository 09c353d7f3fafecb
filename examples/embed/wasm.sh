#!/usr/bin/env bash
# Builds the module for a browser: wasm.sh MODULE.wasm. Without the questions `schema` and `tables`, which are files as well.
set -euo pipefail
out=$(realpath "$1")
cd "$(dirname "$0")"
cargo rustc --locked --lib --crate-type cdylib --profile wasm --target wasm32-unknown-unknown --no-default-features
cp "${CARGO_TARGET_DIR:-target}/wasm32-unknown-unknown/wasm/shankline_embed.wasm" "$out"
