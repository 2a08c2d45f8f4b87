#!/usr/bin/env bash
# One command from a bare Debian 12 to answers: installs what a build needs, builds a release,
# makes the demo book in build/demo and asks it the questions of the day.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
sh .ci/install build

mkdir -p build/demo
echo 'Building (log: build/release.log) ...'
if ! { cmake --preset release && cmake --build build/release --parallel "$(nproc)"; } \
    >build/release.log 2>&1; then
  tail -n 40 build/release.log
  exit 1
fi

export XDG_STATE_HOME="$PWD/build/demo/state" TIMEWORN_BOOK="$PWD/build/demo/demo.db"
export PATH="$PWD/build/release:$PATH"
rm -rf build/demo/state build/demo/demo.db

# A question may answer "no" or "not known": its exit code is shown, and the show goes on.
show() {
  printf '\n$ timeworn'
  printf " %s" "$@"
  printf '\n'
  timeworn "$@" || echo "(exit code $?)"
}

show new 'Marrow Point' --for-tests --clock 2026-03-05T08:00:00Z --seed 7
show read demo_db/fleet.record
show ready ZZ-KIT --hours 3 --as-of 2026-03-04
show ready ZZ-KIT --hours 20 --as-of 2026-03-04
show due ZZ-KIT --as-of 2026-03-04
show why 'disc D-77' --as-of 2026-03-04
show lives ZZ-TWN --as-of 2026-03-04
show trend --as-of 2026-03-04
show check
echo
echo 'Try it yourself: export TIMEWORN_BOOK=build/demo/demo.db XDG_STATE_HOME=build/demo/state'
echo 'then: build/release/timeworn help'
