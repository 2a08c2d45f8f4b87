#!/bin/sh
# starts_nothing.sh PROGRAM: the program can start no other program and reach no network: it does not
# even name the functions for it. (An answer that is paged or mailed by a child process would hand on
# the environment, and what is typed would meet a shell.)
set -eu
names='(execl|execle|execlp|execv|execve|execvp|execvpe|fexecve|fork|vfork|clone|system|popen|posix_spawn|posix_spawnp|socket|connect)'
if nm -D --undefined-only "$1" | grep -E " $names(@|$)"; then
  echo "the program names what it must not use"
  exit 1
fi
nm -D --undefined-only "$1" | grep -q ' open'
