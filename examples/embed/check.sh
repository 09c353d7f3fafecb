#!/usr/bin/env bash
# Everything that a change of this package must pass; .ci/run runs it. What it needs is installed, or left out loudly where
# that cannot be. SPOILED says how many spoiled requests go through the door.
set -euo pipefail
cd "$(dirname "$0")"
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
step() { printf '\n== embed: %s (after %d s)\n' "$1" "$SECONDS"; }
fail() { echo "FAILED: $1" >&2; exit 1; }
left_out() { printf '\n!! LEFT OUT: %s\n\n' "$1" >&2; }
export CARGO_PROFILE_DEV_DEBUG=0 CARGO_PROFILE_TEST_DEBUG=0 CARGO_TERM_COLOR=never
# One place for what is built here and by the library above.
export CARGO_TARGET_DIR=${CARGO_TARGET_DIR:-$(cd ../.. && pwd)/target}
built=$CARGO_TARGET_DIR/release

step "format and clippy"
cargo fmt --check
cargo clippy --locked --all-targets -- -D warnings
cargo clippy --locked --no-default-features --lib -- -D warnings
cargo clippy --locked --no-default-features --features reports,pictures,design,connections --lib -- -D warnings

step "the libraries, the tests, and spoiled requests through the door"
# As they are sold: one build for the tests, the callers and the page.
cargo build --locked --release
SPOILED_REQUESTS=${SPOILED:-100000} cargo test --locked --release -- --nocapture

step "header and library have the same functions"
sed -n 's/^[a-z0-9_]* \(shankline_[a-z]*\)(.*/\1/p' shankline.h | sort > "$scratch/header"
nm -D --defined-only "$built/libshankline_embed.so" | awk '{ print $3 }' | sort > "$scratch/symbols"
diff "$scratch/header" "$scratch/symbols" || fail "header and library differ"

step "C and C++ callers, with warnings as errors"
warnings=(-Wall -Wextra -Werror -pedantic -Wconversion -O2)
with_library=(-L"$built" -lshankline_embed -Wl,-rpath,"$built")
gcc -std=c99 "${warnings[@]}" callers/verdict.c -o "$scratch/verdict" "${with_library[@]}"
gcc -std=c99 "${warnings[@]}" callers/sweep.c -o "$scratch/sweep" "${with_library[@]}"
g++ -std=c++11 "${warnings[@]}" callers/verdict.cpp -o "$scratch/verdict_cpp" "${with_library[@]}"
gcc -std=c99 "${warnings[@]}" callers/verdict.c -o "$scratch/verdict_static" "$built/libshankline_embed.a" -lm -lpthread -ldl
for caller in verdict verdict_cpp verdict_static; do
    # They end the text with a line of their own.
    "$scratch/$caller" ../data/davit_socket.json | head -c -1 | cmp - ../data/davit_socket_report.txt || fail "$caller prints another report"
    code=0
    "$scratch/$caller" callers/sweep.c 2> "$scratch/refusal" || code=$?
    test $code = 2 || fail "$caller took a file that is no joint"
    grep -q '"code":"request_json"' "$scratch/refusal" || fail "$caller does not say why"
done
"$scratch/sweep" ../data/davit_socket.json 60000 1000000 | tee "$scratch/report"
grep -q '^258139 of 1000000 load cases hold' "$scratch/report" || fail "the sweep came out otherwise"

step "under a memory checker"
if ! command -v valgrind >/dev/null 2>&1; then
    { apt-get update && apt-get install -y valgrind; } >/dev/null 2>&1 || true
fi
if command -v valgrind >/dev/null 2>&1; then
    # Reads, writes and leaks. Not whether a value was set: the compiler reads both sides of an `and` at once where one
    # side cannot matter, which looks the same; safe Rust reads nothing that was not set, and the unsafe code reads nothing.
    checked=(valgrind --quiet --leak-check=full --show-leak-kinds=definite,indirect --errors-for-leak-kinds=definite,indirect
        --undef-value-errors=no --error-exitcode=9)
    "${checked[@]}" "$scratch/verdict" ../data/davit_socket.json >/dev/null || fail "verdict.c"
    "${checked[@]}" "$scratch/verdict_cpp" ../data/seesaw_pivot.json >/dev/null || fail "verdict.cpp"
    "${checked[@]}" "$scratch/sweep" ../data/winch_foot.json 20000 3000 >/dev/null || fail "sweep.c"
    spoiled=$(cargo test --locked --release --test spoiled --no-run --message-format=json 2>/dev/null |
        sed -n 's/.*"executable":"\([^"]*spoiled[^"]*\)".*/\1/p')
    test -x "$spoiled" || fail "the test of spoiled requests is not found"
    SPOILED_REQUESTS=1000 "${checked[@]}" "$spoiled" --test-threads=1 spoiled_requests null_is || fail "spoiled requests"
else
    left_out "valgrind cannot be installed: no memory checker"
fi

step "Python"
python3 -m venv "$scratch/python"
pip=("$scratch/python/bin/pip" install --quiet --disable-pip-version-check)
python=$scratch/python/bin/python
"${pip[@]}" ./python
(cd "$scratch" && "$python" -m unittest discover "$OLDPWD/python/tests")
if "${pip[@]}" numpy; then
    (cd "$scratch" && "$python" -m unittest discover "$OLDPWD/python/tests" && "$python" "$OLDPWD/python/timing.py")
else
    left_out "numpy cannot be installed: no arrays"
fi
(cd "$scratch" && "$python" "$OLDPWD/python/show_joint.py" "$OLDPWD/../data/seesaw_pivot.json" joint.html) > "$scratch/report"
grep -q '^HOLDS' "$scratch/report" || fail "the script shows another word"

step "the module for a browser"
if ! rustup target add wasm32-unknown-unknown; then
    left_out "the target wasm32-unknown-unknown cannot be installed: no module for a browser"
elif ! command -v node >/dev/null 2>&1; then
    left_out "node is not installed: no module for a browser"
else
    ./wasm.sh "$scratch/shankline.wasm"
    node callers/check.mjs "$scratch/shankline.wasm"
    node callers/answers.mjs "$scratch/shankline.wasm" > "$scratch/wasm_answers"
    "$python" callers/answers.py > "$scratch/native_answers"
    cmp "$scratch/native_answers" "$scratch/wasm_answers" || fail "native and wasm answer differently"
    ./wasm.sh "$scratch/small.wasm" ""
    node callers/verdicts.mjs "$scratch/small.wasm" "$scratch/shankline.wasm"
    for budget in shankline:850000 small:560000; do
        size=$(gzip -9 -c "$scratch/${budget%:*}.wasm" | wc -c)
        test "$size" -lt "${budget#*:}" || fail "the module ${budget%:*} has grown to $size bytes compressed"
    done
fi

echo
echo "embed: all checks passed"
