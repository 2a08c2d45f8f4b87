#!/bin/sh
# Makes the book of the newest form: make.sh FILE, in an empty folder, with timeworn in the PATH.
set -e
export TIMEWORN_BOOK="$1"
timeworn new 'Marrow Point' --for-tests --clock 2026-03-05T08:00:00Z --seed 7
timeworn read - <<'SHEET'
2026-01-10 aircraft ZZ-KIT is model "Larkwing 5", serial 5012.
2026-01-10 aircraft ZZ-KIT has required place engine 1.
2026-01-10 aircraft ZZ-KIT counts airframe hours from collective meter.
2026-01-10 aircraft ZZ-KIT brings forward airframe 4321.6 h, 5608 landings, collective meter 1234.5, basis "signed log 3 page 41".
2026-01-10 engine TS-40 E-1001 brings forward 1820.4 h, 2101 starts.
2026-01-10 engine TS-40 E-1001 fitted to aircraft ZZ-KIT engine 1, airframe 4321.6 h.
2026-01-10 inspection "100-hour inspection" on aircraft ZZ-KIT every 100.0 h, source "programme".
2026-01-10 inspection "100-hour inspection" done on aircraft ZZ-KIT, airframe 4321.6 h, by "B. Quill".
2026-02-01 aircraft ZZ-KIT flew 1.7 h, 1 start, 3 landings, collective meter 1234.5 to 1236.2.
2026-02-02 aircraft ZZ-KIT flew 1.1 h, 1 start, 1 landing, collective meter 1236.2 to 1237.3.
2026-02-02 aircraft ZZ-KIT engine 1 cruise 3500 ft, outside air 12 C, torque 78 %, temperature 702 C, bleed off, steady 5 min.
SHEET
writer=$(timeworn history ZZ-KIT --json | sed -n 's/.*"horizon": "\([0-9A-Z]*\)-.*/\1/p' | head -n 1)
timeworn correct "$writer-11" '1.2 h, collective meter 1236.2 to 1237.4' --because 'typed 1.1, was 1.2'
